/** The part of an xAPI 1.0.3 statement that we write. Source: xAPI-Data.md, 2.4. */
export interface Statement {
  readonly id: string
  readonly version: '1.0.3'
  readonly timestamp: string
  readonly actor: Agent
  readonly verb: { readonly id: string; readonly display: { readonly en: string } }
  readonly object: { readonly objectType: 'Activity'; readonly id: string; readonly definition: { readonly type?: string } }
  readonly result?: Result
  readonly context: {
    readonly revision?: string
    readonly instructor?: Agent
    readonly team?: { readonly objectType: 'Group'; readonly member: readonly Agent[] }
    readonly extensions: Readonly<Record<string, unknown>>
  }
}

/** A person by the id of the employer; no address of mail. */
export interface Agent {
  readonly objectType: 'Agent'
  readonly name?: string
  readonly account: { readonly homePage: string; readonly name: string }
}

export interface Result {
  readonly success?: boolean
  readonly completion?: boolean
  readonly score?: { readonly scaled: number; readonly raw: number; readonly min: 0; readonly max: number }
}
