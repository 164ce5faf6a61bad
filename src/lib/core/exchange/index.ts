export type { BackupError } from './backup-error';
export type { Backup } from './backup-form';
export { binaryLookOf, type BinaryLook } from './binary-look';
export { lineWords, logColumns, type LineWord, type LogColumn, type LogHeading } from './columns';
export type { CsvError, CsvRow, CsvTable, RowProblem } from './csv-row';
export {
  decodeText,
  type DecodeBytes,
  type DecodedText,
  type TextEncoding,
  type TextError,
} from './decode-text';
export type { ExistingLog } from './existing-lines';
export { guardText, unguardText } from './formula-guard';
export {
  guessColumns,
  type ColumnGuess,
  type ColumnPlaces,
  type ImportQuestion,
} from './guess-columns';
export { importDrafts } from './import-drafts';
export {
  importFields,
  type DayAnchor,
  type DaysWritten,
  type ImportField,
  type ImportMapping,
  type SpecimenName,
} from './import-mapping';
export type { ImportPreview, ImportProgress, Outcome, PreviewRow } from './import-preview';
export type { ImportTotals, Total } from './import-totals';
export { previewImport, previewImportInSlices } from './preview-import';
export { readBackup, readBackupInSlices, type BackupProgress } from './read-backup';
export { readCsv, readCsvInSlices, type CsvOptions, type CsvProgress } from './read-csv';
export type {
  AlreadyThere,
  NoteRow,
  PassedOver,
  ReadingRow,
  Refusal,
  RowContent,
  StateRow,
  WordRow,
} from './row-content';
export { detectSeparator, separators, type Separator } from './separator';
export { specimensInTable } from './specimens-in-table';
export { unitInHeading } from './unit-in-words';
export { writeBackup } from './write-backup';
export { writeCsv } from './write-csv';
export { writeLogCsv } from './write-log-csv';
