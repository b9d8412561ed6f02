import { expect, test } from 'vitest'
import { flexGaps } from '../../src/site/flex-gap.ts'

function check(css: string, margins: string): void {
  expect(flexGaps(css)).toBe(`@supports not (appearance:none){${margins}}`)
}

test.each([
  ['a row', '.a{display:flex;gap:8px}', '.a>*+*{margin-left:8px}'],
  ['a row in a line', '.a{display:inline-flex;gap:8px}', '.a>*+*{margin-left:8px}'],
  ['a row that goes on below', '.a{display:flex;flex-wrap:wrap;gap:4px 8px}', '.a>:not(#_){margin-right:8px;margin-bottom:4px}'],
  ['a column', '.a{display:flex;flex-direction:column;gap:4px 8px}', '.a>*+*{margin-left:0;margin-top:4px}'],
  ['a grid, which has gaps in old engines too', '.a{display:grid;gap:8px}', ''],
  ['a row without a gap', '.a{display:flex}', ''],
  ['a gap that is computed', '.a{display:flex;gap:calc(1px + 2px)}', '.a>*+*{margin-left:calc(1px + 2px)}'],
  ['several boxes', '.a,.b{display:flex;gap:8px}', '.a>*+*{margin-left:8px}.b>*+*{margin-left:8px}'],
  ['a selector with a list in it', '.a:not(.b,.c){display:flex;gap:8px}', '.a:not(.b,.c)>*+*{margin-left:8px}'],
  ['a gap that is said apart', '.a{display:flex}.b{color:red}.a{gap:8px}', '.a>*+*{margin-left:8px}'],
  ['another gap inside something', '.a{display:flex;gap:8px}.b .a{gap:1px}', '.a>*+*{margin-left:8px}.b .a>*+*{margin-left:1px}'],
  ['another gap on a small screen', '.a{display:flex;gap:8px}@media(x){.a{gap:1px}}', '.a>*+*{margin-left:8px}@media(x){.a>*+*{margin-left:1px}}'],
  [
    'another direction on a small screen',
    '.a{display:flex;gap:8px}@media(x){.a{flex-direction:column}}',
    '.a>*+*{margin-left:8px}@media(x){.a>*+*{margin-left:0;margin-top:8px}}',
  ],
  [
    'a row that goes on below on a small screen alone',
    '.a{display:flex;gap:8px}@media(x){.a{flex-wrap:wrap}}',
    '.a>*+*{margin-left:8px}@media(x){.a>*+*{margin-left:0}.a>:not(#_){margin-right:8px;margin-bottom:8px}}',
  ],
  [
    'a row that no longer goes on below',
    '.a{display:flex;flex-wrap:wrap;gap:8px}@media(x){.a{flex-wrap:nowrap}}',
    '.a>:not(#_){margin-right:8px;margin-bottom:8px}@media(x){.a>:not(#_){margin-right:0;margin-bottom:0}.a>*+*{margin-left:8px}}',
  ],
  ['a font, which is no box', '@font-face{font-family:x}', ''],
])('%s', (_, css, margins) => check(css, margins))
