import { ofLanguage } from './of-language.ts'

/** How a dot after an abbreviation is to be read. */
export interface Abbreviations {
  /** Never ends a sentence: titles, `e.g.` */
  never: ReadonlySet<string>
  /** Ends none before what it announces: a number, a letter, a bracket, a word in lower case (`no. 2`, `Fig. A`). */
  announcing: ReadonlySet<string>
  /** Ends one only before a capital (`etc.`, `5 min.`). */
  beforeCapital: ReadonlySet<string>
  /** Ends one only before one of the language's own `starters`: names of firms and countries (`ACME Inc.`, `U.S.`). */
  ofNames: ReadonlySet<string>
  /** Words that start a sentence, and are no part of a name. */
  starters: ReadonlySet<string>
  /** Words before a letter or number that names a thing: in `Zone A.` the letter is no initial. */
  labels: ReadonlySet<string>
  /** Words before an ordinal number with a dot (`am 3. Mai`). */
  beforeOrdinal: ReadonlySet<string>
}

const words = (list: string): ReadonlySet<string> => new Set(list.split(/\s+/).filter(Boolean))

const measures = 'in ft yd lb lbs oz gal hr hrs h min sec s m wk mo yr rev rpm r.p.m d.c a.c a.m p.m'

const english: Abbreviations = {
  never: words('mr mrs ms dr prof st messrs e.g i.e eg ie cf viz fa vs eng capt sgt gen sr jr mt'),
  announcing: words(
    `no nos nr fig figs sec sect sects ch chap pos rev approx max incl excl qty vol p pp para paras par pt art eq eqs ref refs item tab table
    app apdx cl ser vers ver v cat step dwg drg pn sn p.n s.n part mod jan feb mar apr jun jul aug sep sept oct nov dec ca circa nom tel ext
    ed ln div dept deg`,
  ),
  beforeCapital: words(
    `etc et al ${measures} temp assy conn dia diam elec hyd pneu instr lub mach mfg mfr mtg opt req reqd spec specs std tol wt adj alt amb avg
    cont cyl dim dims dist equip est freq horiz vert lg mat mech mtl orig pkg press recomm thk typ int resp acc temps cap cu sq pcs pc ea hex lh rh`,
  ),
  ofNames: words('inc ltd co corp llc plc bros gmbh u.s u.k e.u u.s.a'),
  starters: words(
    `a an the it its this that these those they he she we you i if when while before after as at in on for from to with without do does is are
    use set then there once until unless not never no all each every both only see make let check open close turn press remove replace install
    start stop clean keep wait read put push pull move lift obey record refer go lock connect disconnect tighten loosen fit drain fill follow
    pick take wear hold select switch touch`,
  ),
  labels: words(
    `zone class category cat type phase rev revision size grade item step pos position part section sect area group level channel port slot row
    column point line figure fig table sheet drawing mode option variant version axis series model letter key pin terminal plug pl sil stop code`,
  ),
  beforeOrdinal: words(''),
}

const german: Abbreviations = {
  never: words('dr prof hr fr fa st ing dipl z.b d.h u.a z.t i.d.r o.g s.o s.u bzw ca vgl sog evtl ggf inkl exkl einschl insb bspw zzgl zz'),
  announcing: words(
    `nr abb kap abs tab s art pos max min bd ziff bl seite rev ausg anm lfd fig typ ref bez best teil tel vol jan feb mär apr jun jul aug sep okt
    nov dez anh stk`,
  ),
  beforeCapital: words(`usw etc u.s.w ff f std sek min h s m mm o.ä u.ä temp durchm elektr mech hydr pneum`),
  ofNames: words('co gmbh inc ltd corp'),
  starters: words(
    `der die das den dem ein eine einen er sie es wir ihr wenn falls bevor nachdem während vor nach mit ohne im in am an auf zum zur für von bei
    dann danach alle jede jeder jedes diese dieser dieses kein keine nicht nie öffnen schließen prüfen drehen drücken stellen ziehen setzen warten
    beachten siehe verwenden reinigen`,
  ),
  labels: words(
    'zone klasse kategorie typ phase rev revision größe stufe position pos teil abschnitt gruppe kanal platz zeile spalte punkt bild tabelle blatt achse reihe pl schritt anhang',
  ),
  beforeOrdinal: words('am der die das den dem des vom im zum zur ab bis jede jeden jedes jeder zwischen und oder beim'),
}

const spanish: Abbreviations = {
  never: words('sr sra sres dr dra ing lic d dña ud uds p.ej ej ee p cía'),
  announcing: words(
    `n núm núms no nro pág págs pag fig figs art cap tab aprox máx mín ref pos vol tel rev sec apdo ap ed cód esc ene feb mar abr may jun jul ago
    sep sept oct nov dic incl`,
  ),
  beforeCapital: words('etc min seg h s m temp elec hidr uu a.m p.m'),
  ofNames: words('s.a s.l ltda inc co'),
  starters: words(
    `el la los las un una unos unas él ella este esta estos estas ese esa si cuando mientras antes después no nunca al en con sin para por de se
    cada todo toda todos todas luego abra cierre gire pulse retire coloque compruebe espere use limpie`,
  ),
  labels: words(
    'zona clase categoría tipo fase rev revisión tamaño grado posición pos parte sección grupo nivel canal fila columna punto línea tabla figura hoja eje serie paso pl',
  ),
  beforeOrdinal: words(''),
}

const french: Abbreviations = {
  never: words('m mm dr pr me st p.ex ex cf c.-à-d env'),
  announcing: words('n no nos réf fig figs p pp pos chap art tab vol max min rev sect ann éd tél approx janv févr avr juil sept oct nov déc incl'),
  beforeCapital: words('etc min sec h s m temp élec hydr'),
  ofNames: words('s.a s.a.r.l sté cie inc'),
  starters: words(
    `le la les un une des il elle ils elles ce cet cette ces si quand lorsque avant après pendant ne en dans sur avec sans pour par de du puis
    chaque tout toute tous toutes ouvrez fermez tournez appuyez retirez vérifiez attendez utilisez nettoyez`,
  ),
  labels: words(
    'zone classe catégorie type phase rév révision taille degré position pos partie section groupe niveau canal rangée colonne point ligne tableau figure feuille axe série étape pl',
  ),
  beforeOrdinal: words(''),
}

const byLanguage: Readonly<Record<string, Abbreviations>> = { en: english, de: german, es: spanish, fr: french }

/** Those of a language (`en`, `es-MX`), and the English ones where it has none of its own. */
export const abbreviationsOf = (language: string): Abbreviations => ofLanguage(byLanguage, language) ?? english

const all = new Set(
  Object.values(byLanguage).flatMap(({ never, announcing, beforeCapital, ofNames }) => [...never, ...announcing, ...beforeCapital, ...ofNames]),
)

/** Whether a word with a dot behind it is an abbreviation in some language. In lower case, without the last dot. */
export const isAbbreviation = (word: string): boolean => all.has(word)
