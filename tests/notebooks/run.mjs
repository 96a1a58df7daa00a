// `npm run notebooks`: executes the notebooks anew against the built package and writes their outputs.
import { executeNotebook, missingForNotebooks } from './jupyter.mjs';
import { notebookPaths, writeNotebook } from './notebook-file.mjs';

const missing = missingForNotebooks();
if (missing !== undefined) {
  console.error(missing);
  process.exitCode = 1;
} else {
  for (const path of notebookPaths()) {
    writeNotebook(path, await executeNotebook(path));
    console.log(`written: ${path}`);
  }
}
