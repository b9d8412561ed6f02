interface Plainer {
  plain: string
  /** A sentence in which the word is a term of the trade. */
  unless?: RegExp
}

/** A form a column: `utilise utilises utilised utilising` for `use uses used using`. */
const verbs: readonly (readonly [string, string, RegExp?])[] = [
  ['utilise utilises utilised utilising', 'use uses used using'],
  ['utilize utilizes utilized utilizing', 'use uses used using'],
  ['commence commences commenced commencing', 'start starts started starting'],
  [
    'terminate terminates terminated terminating',
    'end ends ended ending',
    /\b(?:wires?|cables?|conductors?|leads?|cores?|lines?|bus|shields?|screens?|fibres?|fibers?|resistors?)\b/i,
  ],
  ['depress depresses depressed depressing', 'press presses pressed pressing'],
  ['cease ceases ceased ceasing', 'stop stops stopped stopping'],
  ['endeavour endeavours endeavoured endeavouring', 'try tries tried trying'],
  ['endeavor endeavors endeavored endeavoring', 'try tries tried trying'],
]

const phrases: readonly (readonly [string, string])[] = [
  ['prior to', 'before'],
  ['previous to', 'before'],
  ['subsequent to', 'after'],
  ['in order to', 'to'],
  ['so as to', 'to'],
  ['in the event that', 'if'],
  ['in case that', 'if'],
  ['due to the fact that', 'because'],
  ['owing to the fact that', 'because'],
  ['in view of the fact that', 'because'],
  ['despite the fact that', 'although'],
  ['at this point in time', 'now'],
  ['at the present time', 'now'],
  ['until such time as', 'until'],
  ['with the exception of', 'except'],
  ['in the vicinity of', 'near'],
  ['in close proximity to', 'near'],
  ['in the proximity of', 'near'],
  ['adjacent to', 'next to'],
  ['by means of', 'with'],
  ['in conjunction with', 'with'],
  ['in the absence of', 'without'],
  ['in lieu of', 'instead of'],
  ['in excess of', 'more than'],
  ['with regard to', 'about'],
  ['with respect to the fact', 'about the fact'],
  ['for the duration of', 'during'],
  ['in the course of', 'during'],
  ['for the purpose of', 'for'],
  ['in such a manner that', 'so that'],
  ['in such a way that', 'so that'],
  ['on a daily basis', 'every day'],
  ['on a weekly basis', 'every week'],
  ['on a monthly basis', 'every month'],
  ['on a regular basis', 'regularly'],
  ['a sufficient amount of', 'enough'],
  ['a sufficient quantity of', 'enough'],
  ['the majority of', 'most'],
  ['has the ability to', 'can'],
  ['have the ability to', 'can'],
  ['ensure that', 'make sure that'],
  ['ensures that', 'makes sure that'],
  ['ascertain that', 'make sure that'],
  ['utilisation of', 'use of'],
  ['utilization of', 'use of'],
  ['whilst', 'while'],
  ['amongst', 'among'],
  ['henceforth', 'from now on'],
  ['forthwith', 'at once'],
  ['numerous', 'many'],
]

/** Words and phrases in lower case, each with what can stand in the same place. A list of our own; common practice. */
export const plainer: ReadonlyMap<string, Plainer> = new Map([
  ...verbs.flatMap(([longer, shorter, unless]) => {
    const plain = shorter.split(' ')
    return longer.split(' ').map((form, index): [string, Plainer] => [form, { plain: plain[index] ?? form, ...(unless && { unless }) }])
  }),
  ...phrases.map(([longer, plain]): [string, Plainer] => [longer, { plain }]),
])
