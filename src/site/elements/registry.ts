import Alarm from './Alarm.astro'
import Anchor from './Anchor.astro'
import Avoid from './Avoid.astro'
import Callout from './Callout.astro'
import Cause from './Cause.astro'
import Causes from './Causes.astro'
import Consequence from './Consequence.astro'
import Drawing from './Drawing.astro'
import Fact from './Fact.astro'
import Figure from './Figure.astro'
import Hazard from './Hazard.astro'
import Image from './Image.astro'
import Include from './Include.astro'
import Link from './Link.astro'
import MarkdownTable from './MarkdownTable.astro'
import Page from './Page.astro'
import Part from './Part.astro'
import Reading from './Reading.astro'
import Result from './Result.astro'
import Safety from './Safety.astro'
import SafetySummary from './SafetySummary.astro'
import Step from './Step.astro'
import Steps from './Steps.astro'
import Table from './Table.astro'
import Tag from './Tag.astro'
import Term from './Term.astro'
import Terminal from './Terminal.astro'

/**
 * The component of every element that a page may use (model/elements.ts), and of Markdown's own link, picture
 * and table. `<Fitted>` has none: load/fitted.ts opens it or takes it out.
 */
export const registry = {
  Alarm,
  Anchor,
  Avoid,
  Callout,
  Cause,
  Causes,
  Consequence,
  Drawing,
  Fact,
  Figure,
  Hazard,
  Include,
  Page,
  Part,
  Reading,
  Result,
  Safety,
  SafetySummary,
  Step,
  Steps,
  Table,
  Tag,
  Term,
  Terminal,
  a: Link,
  img: Image,
  table: MarkdownTable,
}
