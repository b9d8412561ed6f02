/** The digits of a tag. Tags with the same ones (`PB053` and its lamp `LT053`) may be one apparatus. Common practice. */
export function tagNumber(tag: string): string {
  return tag.match(/\d+/g)?.join('.') ?? tag
}
