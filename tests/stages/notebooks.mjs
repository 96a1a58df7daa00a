// Every notebook, executed headless against the built package: what is committed must be what a fresh run shows.
import { executeNotebook, missingForNotebooks } from '../notebooks/jupyter.mjs';
import { differences, notebookPaths, readNotebook } from '../notebooks/notebook-file.mjs';
import { StageFailure } from './stage.mjs';

export async function runNotebooks(tally) {
  const paths = notebookPaths();
  if (paths.length === 0) tally.fail('notebooks', 'no examples/notebooks/*.ipynb found');
  const missing = missingForNotebooks();
  for (const path of paths) {
    const name = `notebook: ${path}`;
    if (missing === undefined) await tally.stage(name, () => compare(path));
    else tally.skip(name, missing);
  }
}

async function compare(path) {
  const faults = differences(readNotebook(path), await executeNotebook(path));
  if (faults.length > 0) throw new StageFailure([...faults, '`npm run notebooks` writes the outputs anew.'].join('\n'));
}
