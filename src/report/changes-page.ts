import type { ChangeGroup, Detail } from '../changes/change.ts'
import type { Revision } from '../changes/records.ts'
import type { SpeakingPage } from '../changes/speaking-pages.ts'
import {
  byGroup,
  type ChangesReport,
  fieldName,
  groupWords,
  nameOf,
  notComparedLines,
  placesByFile,
  placesWords,
  relationWords,
  sentenceOf,
  type ToldChange,
  totalWords,
} from './changes-words.ts'
import { personWords, reasonWords, retrainingAsk, retrainingRemarks, retrainingTotal, type ToldPerson, type ToldRetraining } from './retraining.ts'
import { shownCharacters } from './visible.ts'

/**
 * Changes as one page of HTML that needs no other file and runs nothing, to read from disk and to print: with a box to
 * tick beside each page that has to be compared. `style`: the text of its style sheet.
 */
export function reportChangesPage(report: ChangesReport, style: string): string {
  const { old, now, changes, remarks, notCompared, retraining } = report
  const groups = byGroup(changes)
  const facts = [...remarks, ...notComparedLines(notCompared)]
  const title = `${now.model}: what changed from revision ${old.revision} to ${now.revision}`
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${safe(title)}</title>
<style>${style.replaceAll('</', '<\\/')}</style>
</head>
<body>
<main>
<dl class="plate">${plate(old, now)}</dl>
<h1>What the new revision touches</h1>
<p>${safe(totalWords(report))}.</p>${retraining ? `\n<p><a href="#retraining">${safe(retrainingTotal(retraining))}</a>.</p>` : ''}
${groups.length > 0 ? `<ul class="counts">${groups.map(({ group, own }) => `<li><a class="${group}" href="#${group}"><b>${own.length}</b> ${safe(groupWords[group].title)}</a></li>`).join('')}</ul>` : '<p class="none">Both revisions say the same.</p>'}
${facts.length > 0 ? `<ul class="remarks">${facts.map((fact) => `<li>${marked(fact)}</li>`).join('')}</ul>` : ''}
${groups.map(({ group, own }) => section(group, own)).join('\n')}
${retraining ? retrainingSection(retraining) : ''}
<p class="end">Compared are the lists of the machine, not the drawings themselves. Whether a page is still right, only a person can say who knows the machine.</p>
</main>
</body>
</html>
`
}

function plate(old: Revision, now: Revision): string {
  const entry = (name: string, value: string) => `<div><dt>${name}</dt><dd>${safe(value)}</dd></div>`
  const revision = ({ document, revision, date }: Revision) => `${document} ${revision}, ${date}`
  return [entry('Model', now.model), entry('Serial no.', now.serials.join(', ')), entry('Old', revision(old)), entry('New', revision(now))].join('')
}

function section(group: ChangeGroup, own: readonly ToldChange[]): string {
  const { title, ask } = groupWords[group]
  return `<section class="group group-${group}" id="${group}">
<header><h2>${safe(title)}</h2><p>${safe(ask)}</p></header>
${own.map(article).join('\n')}
</section>`
}

function retrainingSection(retraining: ToldRetraining): string {
  const lesson = ({ title, lesson, revision, reasons }: ToldPerson['lessons'][number]) =>
    `<li>${safe(title)} <span class="thing">${safe(`${lesson}, revision ${revision}`)}</span>${reasons.map((reason) => `<small>${marked(reasonWords(reason))}</small>`).join('')}</li>`
  const people = retraining.people.map(
    (person) =>
      `<article class="change"><h3>${safe(personWords(person))}</h3><ul class="pages">${person.lessons.map(lesson).join('')}</ul></article>`,
  )
  const remarks = retrainingRemarks(retraining).map((remark) => `<p>${marked(remark)}</p>`)
  return `<section class="group" id="retraining">
<header><h2>Who has to be trained again</h2><p>${safe(retrainingAsk)}</p>${remarks.join('')}</header>
${people.length > 0 ? people.join('\n') : '<p class="none">Nobody, by these records.</p>'}
</section>`
}

function article(change: ToldChange): string {
  const { kind, thing, text, details, notes, pages } = change
  const head = `<h3><span class="thing">${thing}</span> <span class="label">${safe(nameOf(change))}</span> ${safe(sentenceOf(change))}</h3>`
  const what = kind === 'means-another' ? '' : `<p class="text">${safe(text)}</p>`
  const told = kind === 'renamed' ? '' : table(details)
  const facts = notes.length > 0 ? `<ul class="notes">${notes.map((note) => `<li>${marked(note)}</li>`).join('')}</ul>` : ''
  const speaking = pages.length > 0 ? `<ul class="pages">${pages.map(pageItem).join('')}</ul>` : ''
  return `<article class="change">${head}${what}${told}${facts}${speaking}</article>`
}

function table(details: readonly Detail[]): string {
  if (details.length === 0) return ''
  const cell = (value: string, name: string) => (value === '' ? `<td class="${name} empty">empty</td>` : `<td class="${name}">${safe(value)}</td>`)
  const rows = details.map(({ field, was, is }) => `<tr><th scope="row">${safe(fieldName(field))}</th>${cell(was, 'was')}${cell(is, 'is')}</tr>`)
  return `<table><thead><tr><th scope="col">What</th><th scope="col">Old</th><th scope="col">New</th></tr></thead><tbody>${rows.join('')}</tbody></table>`
}

function pageItem(page: SpeakingPage): string {
  const { title, relation, translations } = page
  const files = placesByFile(page).map((own) => `<small class="mono">${safe(placesWords(own))}</small>`)
  const also = translations.length > 0 ? `; also in ${translations.join(', ')}` : ''
  return `<li>${safe(title)} <span class="thing">${safe(relationWords[relation] + also)}</span>${files.join('')}</li>`
}

/** What an author wrote, as text alone. */
function safe(text: string): string {
  const plain = shownCharacters(text)
    .map((it) => it.text)
    .join('')
  return plain.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`)
}

/** A sentence of ours, its names as labels. */
const marked = (text: string) => safe(text).replace(/`([^`]*)`/g, '<span class="label">$1</span>')
