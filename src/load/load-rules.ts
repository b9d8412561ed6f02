import type { Finding, Problem, RuleTexts } from '../source/finding.ts'

/** An error of a file keeps something out of the manual: without more said, it can be neither lowered nor accepted. */
const rule = (
  id: string,
  summary: string,
  why: string,
  severity: RuleTexts['severity'] = 'error',
  source = 'house rule',
  guards: RuleTexts['guards'] | 'nothing' = severity === 'error' ? 'build' : 'nothing',
): RuleTexts => ({ id, severity, summary, why, source, ...(guards === 'nothing' ? {} : { guards }) })

/** What can be wrong with a file before anything is compared with the machine. */
export const loadRules = {
  notAMachine: rule(
    'not-a-machine',
    'The folder holds no machine.yaml.',
    'Without it nothing says which machine the pages speak of, so nothing can be checked or built.',
  ),
  unreadableFile: rule(
    'unreadable-file',
    'A file or folder cannot be read from disk.',
    'What is in it would be missing from the manual without a word.',
  ),
  notText: rule('not-text', 'A data file or page is not text in UTF-8 or Windows-1252.', 'A binary or UTF-16 file would be read as rubbish.'),
  oldEncoding: rule(
    'windows-1252',
    'A file is in Windows-1252 and not in UTF-8.',
    'It is read, but another program may show its accents and signs wrong.',
    'note',
  ),
  fileTooLarge: rule(
    'file-too-large',
    'A file is larger than the check reads.',
    'A file of this size is an export that went wrong; reading it would stop the check for everybody.',
  ),
  csvSyntax: rule(
    'csv-syntax',
    'A CSV file has a quote that is never closed or text after a closing quote.',
    'The rest of the file would be read as one cell, and its devices would vanish.',
    'error',
    'RFC 4180',
  ),
  unreadableWorkbook: rule(
    'unreadable-workbook',
    'A workbook is not in the XLSX form, or is damaged, locked or too large.',
    'Everything in it would be missing from the manual.',
    'error',
    'ECMA-376',
  ),
  unknownWorksheet: rule(
    'unknown-worksheet',
    'machine.yaml does not name the worksheet of a workbook, or names one that is not there.',
    'Another sheet may hold an older list, and its values would be shown at the machine.',
  ),
  errorCell: rule(
    'error-cell',
    'A cell that is read holds an error value such as #REF! or #N/A.',
    'The value that it should hold is lost, and the manual would show the error in its place.',
    'error',
    'ECMA-376, error values of cells',
  ),
  formulaWithoutValue: rule(
    'formula-without-value',
    'A formula was saved without its result.',
    'Formulas are not computed here: the result that was saved with the workbook is read, and there is none.',
  ),
  mergedCells: rule(
    'merged-cells',
    'A cell that is read is the empty part of a merged range.',
    'A spreadsheet keeps one value for the range, so that the other rows have none, whatever they look like.',
  ),
  longNumber: rule(
    'long-number',
    'A cell holds a number of more digits than a spreadsheet keeps.',
    'A spreadsheet keeps 15 digits; the rest were turned into zeros when the number was typed or imported.',
    'error',
    'common practice of spreadsheets: IEEE 754 double precision',
  ),
  hiddenCells: rule(
    'hidden-cells',
    'Rows, columns or the worksheet that are read are hidden.',
    'They are read like the others; whoever looks at the workbook does not see them.',
    'note',
  ),
  brokenVariableList: rule(
    'broken-variable-list',
    'The variable list of the controller is no PLCopen XML.',
    'Its variables cannot be compared with the I/O list, and give no signals.',
    'error',
    'PLCopen TC6 XML; IEC 61131-10',
  ),
  variableWithoutTag: rule(
    'variable-without-tag',
    'An input or output of the controller belongs to no device.',
    'There is no I/O list, so the signal of this device is missing from the manual.',
    'warning',
  ),
  missingFile: rule('missing-file', 'machine.yaml names a data file that is not there.', 'Everything in it would be missing from the manual.'),
  missingColumn: rule('missing-column', 'A data file lacks a column that is needed.', 'No row of the file can be used without it.'),
  unknownColumn: rule(
    'unknown-column',
    'A data file has a column that is not read.',
    'A misspelt heading hides a whole column from the manual.',
    'note',
  ),
  duplicateColumn: rule('duplicate-column', 'A data file has two columns with the same heading.', 'It is uncertain which of them the manual shows.'),
  missingValue: rule('missing-value', 'A row lacks a value that is needed.', 'The device, part or alarm cannot be shown without it.'),
  extraCells: rule(
    'extra-cells',
    'A row has more cells than the heading line.',
    'A separator inside a text shifts every value after it into the wrong column.',
  ),
  wrongType: rule(
    'wrong-type',
    'A value is not of the kind that is needed.',
    'A number read as text, or a part number read as a number, shows a wrong value at the machine.',
  ),
  yamlSyntax: rule('yaml-syntax', 'A YAML file or frontmatter cannot be read.', 'None of its values can be used.', 'error', 'YAML 1.2.2'),
  yamlAlias: rule(
    'yaml-alias',
    'A YAML file uses anchors and aliases.',
    'A value would be reported at a place where nobody wrote it, and a small file can grow without end.',
  ),
  missingKey: rule('missing-key', 'A key that is needed is missing.', 'The page or record cannot be used without it.'),
  unknownKey: rule('unknown-key', 'A key is not known here.', 'A misspelt key is not read, and what it says is lost without a word.'),
  mdxSyntax: rule('mdx-syntax', 'A page is not valid MDX.', 'The page cannot be read or shown.', 'error', 'MDX 3', 'people'),
  missingFrontmatter: rule(
    'missing-frontmatter',
    'A page has no frontmatter.',
    'Without a title and its facts the page cannot be placed in the manual.',
  ),
  expressionInProse: rule(
    'expression-in-prose',
    'Curly brackets in a page would be computed.',
    '`{4-20} mA` would be shown as `-16 mA`.',
    'error',
    'MDX 3',
    'people',
  ),
  codeInPage: rule(
    'code-in-page',
    'A page imports or exports code.',
    'Pages are content, not programs: a manual must show the same text wherever it is built.',
  ),
  unknownElement: rule(
    'unknown-element',
    'A page uses an element that does not exist.',
    'Nothing would be shown in its place.',
    'error',
    'house rule',
    'people',
  ),
  unknownAttribute: rule(
    'unknown-attribute',
    'An element has an attribute that it does not take.',
    'What it says would be lost without a word.',
    'error',
    'house rule',
    'people',
  ),
  missingAttribute: rule(
    'missing-attribute',
    'An element lacks an attribute that it needs.',
    'It cannot be shown without it.',
    'error',
    'house rule',
    'people',
  ),
  wrongAttribute: rule(
    'wrong-attribute',
    'An attribute has a value that it does not take.',
    'It cannot be shown as it is written.',
    'error',
    'house rule',
    'people',
  ),
  misplacedElement: rule(
    'misplaced-element',
    'An element stands where it has no meaning.',
    'A step outside a list of steps has no number, a hazard outside a message no signal word.',
    'error',
    'house rule',
    'people',
  ),
  outsideLink: rule('outside-link', 'A page links to an address outside the manual.', 'At the panel there is no network: the link leads nowhere.'),
  duplicatePage: rule('duplicate-page', 'Two files would be the same page.', 'One of them would be missing from the manual.'),
  strayFile: rule(
    'stray-file',
    'A file lies where it is not read.',
    'A page in a wrong folder or with a wrong ending is missing from the manual without a word.',
  ),
  orphanTranslation: rule(
    'orphan-translation',
    'A translation has no page in the source language.',
    'Nothing can be compared with it, and it is not shown.',
    'error',
    'house rule',
    'nothing',
  ),
  brokenDrawing: rule(
    'broken-drawing',
    'A drawing sheet is not valid SVG or PDF.',
    'The sheet cannot be shown, and its tags cannot be checked.',
    'error',
    'SVG 1.1; ISO 32000-2',
  ),
  drawingInTwoFiles: rule(
    'drawing-in-two-files',
    'A drawing lies in the folder as SVG and as PDF.',
    'It is uncertain which of them is the drawing that was released.',
  ),
  exchangedLanguages: rule(
    'exchanged-languages',
    'The words of two language columns of a list are each in the language of the other.',
    'Every reader gets the texts in the wrong language.',
    'warning',
  ),
  unlistedDrawing: rule(
    'unlisted-drawing',
    'A drawing file has no row in the drawing register.',
    'The manual leaves the drawing out, and the reader does not learn that there is one.',
    'warning',
  ),
} as const satisfies Record<string, RuleTexts>

/** Takes what a loader finds. */
export type Sink = (rule: RuleTexts, problem: Problem) => void

export function collect(findings: Finding[]): Sink {
  return ({ id, severity }, problem) => findings.push({ ...problem, rule: id, severity })
}
