export type { CaptureColumn } from './csv/capture-heading.js';
export { monitorTraceColumns } from './csv/monitor-trace-columns.js';
export type { SheetTextOptions } from './csv/open-sheet.js';
export {
  type CaptureCsvOptions,
  type CaptureSamples,
  readCaptureCsv,
  safeReadCaptureCsv,
} from './csv/read-capture-csv.js';
export {
  type MonitorTraceCsvOptions,
  readMonitorTraceCsv,
  safeReadMonitorTraceCsv,
} from './csv/read-monitor-trace-csv.js';
export { type ReadingsCsvOptions, readReadingsCsv, safeReadReadingsCsv } from './csv/read-readings-csv.js';
export { informativeColumns, type ReadingsColumn, readingsColumns } from './csv/readings-columns.js';
export type { Delimiter } from './csv/split-csv.js';
export type { DocumentLimits } from './document-limits.js';
export type { ParseResult } from './fault-list.js';
export { type JsonSchema, jsonSchemaOf } from './json-schema-of.js';
export { parseBench, safeParseBench } from './parse-bench.js';
export { parseFindings, safeParseFindings } from './parse-findings.js';
export { parsePlan, safeParsePlan } from './parse-plan.js';
export { parseReadings, safeParseReadings } from './parse-readings.js';
export { parseRecord, safeParseRecord } from './parse-record.js';
export { parseSpecification, safeParseSpecification } from './parse-specification.js';
export { type DocumentName, documentNames, documentVersion } from './parts/header.js';
export { type Document, readDocument, safeReadDocument } from './read-document.js';
