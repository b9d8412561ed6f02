import { wordSet } from './word-set.ts'

export const determiners = wordSet(`
  the a an this that these those each every all both any some no your its their his her our my another either neither enough several one two three
  four five six seven eight nine ten
`)

export const objectPronouns = wordSet(
  'it them him her us me yourself yourselves itself themselves everything something anything nothing somebody nobody everybody',
)

export const subjectPronouns = wordSet('i you he she it we they who which that there this these')

export const prepositions = wordSet(`
  about above across after against along among around as at before behind below beneath beside between beyond by despite down during except for from
  in inside into near of off on onto out outside over past per round since through throughout till to toward towards under underneath until up upon
  via with within without
`)

/** Words that begin a condition or another clause that leans on the main one. */
export const subordinators = wordSet(
  'if when whenever before after once while until unless as because since where wherever although though whereas till',
)

/** A condition that must be read before the act: after it, the reader has acted already. */
export const conditions = wordSet('if when whenever once unless')

/** Words that begin a clause inside a sentence; what stands after them is not the main clause. */
export const clauseOpeners = wordSet(`
  that which who whom whose what how whether why so than if when whenever before after once while until unless because since where wherever although
  though whereas till
`)

export const auxiliaries = wordSet(
  'is are was were be been being am has have had do does did must can cannot may might should shall will would could',
)

/** Words that may stand before a command without changing it. */
export const leadIns = wordSet(
  'then now next first second third finally also again always only immediately afterwards please carefully slowly gently here',
)

/** Words between a form of "be" and its participle. */
export const betweenAdverbs = wordSet('not never always also then now only still just already again often first once both all either fully well')

export const otherFunctionWords = wordSet(`
  and or but nor not never yet very too quite also then there here more most less least much many few only just even still again always often half
  whole such same other otherwise thus therefore however instead else hence moreover besides perhaps
`)

/** Nouns of an act: "Oil level check" names a job and orders nothing. */
export const actNouns = wordSet(`
  adjustment alignment assembly calibration change check cleaning connection control draining filling inspection installation isolation lubrication
  maintenance measurement operation removal repair replacement reset set-up setup start start-up stop test tightening venting
`)

/** In the order to find something out, "if" says what to find out: "Check if the lamp is on." */
export const findingOut = wordSet('ask check decide determine find know prove say see tell test try verify')

/** The same where the clause follows at once: "Write down when it starts." */
export const noting = wordSet('ask check decide determine find know look measure note read record say see tell test watch write')

/** After "if" and "when" they stand for a clause that everybody can take in at the end: "if necessary". */
export const shortConditions = wordSet(`
  any applicable appropriate available empty fitted full installed necessary needed not possible present required so used asked done finished ready
  dry cold hot in
`)

/** Before a condition they narrow the order down: it does not hold without. */
export const narrowing = wordSet('only even as and or unless')

/** Conjunctions between two acts that are done at once. */
export const atOnce = /\b(?:at the same time|simultaneously|together|while|both hands|at once|in one movement)\b/i

/** After these a clause can follow without "that": "make sure the door is shut". */
export const leavesOutThat = wordSet('sure ensure check verify confirm see')

/** Acts that go on while the next one is done. */
export const goingOn = wordSet('hold keep support')

/** Acts that go on with the one before them, or end it. */
export const closing = wordSet('hold keep let listen observe release wait watch')

/** Acts that make one movement: "push in and turn". */
export const gestures = { first: wordSet('press push pull lift'), next: wordSet('turn rotate pull push lift tilt slide twist') }

/** Verbs with nouns beside them that act on a thing by its tag: "test B12". "Wire B12" and "pin B12" are names. */
export const actsOnTag = wordSet('check lift lock press pull push read run set start stop test touch turn watch')

/** Words that go with a verb: "back out the screw". */
export const particles = wordSet('out off up down back away apart')

/** Verbs that reach their object over a preposition. */
export const overPreposition = wordSet('feel go listen look wait watch')

/** After them "once" begins a clause: "once the motor stands". Elsewhere it counts. */
export const afterOnce = wordSet('the a an it they you all both your this that these')

/** Orders to a reader of a text; a note may give them. */
export const readingOrders = wordSet('see refer read note remember compare')
