import { escaped } from './escaped.ts'

/** The page of a package that the training system opens: a bar with what was told to it, and the lesson in a frame below. */
export interface LaunchPage {
  format: PackageFormat
  language: string
  lesson: string
  title: string
  /** The page of the lesson, as a link from here. */
  page: string
  /** Whether the lesson ends with questions: then they tell the result, and no button does. */
  asks: boolean
  /** Said in the bar, such as that a person judges the practical part. */
  remark?: string | undefined
  words: Readonly<Record<'done' | 'again' | 'close' | 'back', string>>
  /** What the script says, by name. */
  said: Readonly<Record<string, string>>
  /** A link from here to the folder with `site.css`, `launch.css` and `launch.js`. */
  assets: string
}

export const packageFormats = ['cmi5', 'scorm-1.2', 'scorm-2004'] as const
export type PackageFormat = (typeof packageFormats)[number]

export function launchPage({ format, language, lesson, title, page, asks, remark, words, said, assets }: LaunchPage): string {
  const data = Object.entries({ format, lesson, ...said }).map(([name, value]) => ` data-${name}="${escaped(value)}"`)
  const button = (name: 'done' | 'again' | 'close') => `<button type="button" data-act="${name}" hidden>${escaped(words[name])}</button>`
  return `<!doctype html>
<html lang="${escaped(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<link rel="stylesheet" href="${escaped(assets)}site.css">
<link rel="stylesheet" href="${escaped(assets)}launch.css">
<script defer src="${escaped(assets)}launch.js"></script>
</head>
<body class="launch">
<header class="launch-bar" data-launch${data.join('')}>
<h1 class="launch-title">${escaped(title)}</h1>
<p class="launch-status" role="status"></p>
${remark === undefined ? '' : `<p class="launch-remark">${escaped(remark)}</p>\n`}<p class="launch-acts"><a href="${escaped(page)}" target="lesson">${escaped(words.back)}</a>${asks ? '' : button('done')}${button('again')}${button('close')}</p>
</header>
<main class="launch-lesson"><iframe name="lesson" title="${escaped(title)}" data-src="${escaped(page)}"></iframe></main>
</body>
</html>
`
}
