/** A question is right when just its right answers are chosen; both are places in its list of answers, from 0. */
export function isRight(right: readonly number[], chosen: readonly number[]): boolean {
  return right.length === chosen.length && right.every((answer) => chosen.includes(answer))
}

/** Whether so many right of all pass, `passPercent` from 1 to 100. In whole numbers: 4 of 5 are 80 percent exactly. */
export function passes({ right, of }: { readonly right: number; readonly of: number }, passPercent: number): boolean {
  return right * 100 >= passPercent * of
}
