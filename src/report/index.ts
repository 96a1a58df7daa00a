export { budgetCsv } from './budget-csv.js';
export { budgetHtml } from './budget-html.js';
export { budgetMarkdown } from './budget-markdown.js';
export { budgetText } from './budget-text.js';
export type { CsvOptions } from './csv/csv-text.js';
export { monitorPictures } from './monitor-pictures.js';
export type {
  NotebookBudget,
  NotebookCells,
  NotebookColumn,
  NotebookContent,
  NotebookDrawing,
  NotebookPicture,
  NotebookPoints,
  NotebookWorking,
} from './notebook-content.js';
export { type NotebookData, type NotebookView, notebookView } from './notebook-view.js';
export { marginText } from './numbers/percent-text.js';
export type { BandPoint, CurvePicture, PictureReading } from './picture/curve-picture.js';
export { curvePictures } from './picture/curve-pictures.js';
export { loadCurvePicture, type PictureOptions } from './picture/load-curve-picture.js';
export { type MarginPicture, marginPicture } from './picture/margin-picture.js';
export { monitorTracePicture } from './picture/monitor-trace-picture.js';
export type { TracePicture, TraceSpan, TraceThreshold } from './picture/trace-picture.js';
export { recordCsv } from './record-csv.js';
export { recordHtml } from './record-html.js';
export { recordJson } from './record-json.js';
export { recordMarkdown } from './record-markdown.js';
export { recordText } from './record-text.js';
export type { BudgetOptions } from './sheet/budget-options.js';
export type { SheetOptions } from './sheet/sheet-options.js';
export type { ShownVerdict } from './sheet/shown-verdict.js';
export type { TextOptions } from './text/render-text.js';
export { worksheetCsv } from './worksheet-csv.js';
export { worksheetHtml } from './worksheet-html.js';
export { worksheetJson } from './worksheet-json.js';
export { worksheetMarkdown } from './worksheet-markdown.js';
export { worksheetText } from './worksheet-text.js';
