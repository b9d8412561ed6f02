/** A number that is written with a decimal point, with the sign of the language. */
export function inLanguage(number: string, language: string): string {
  return language === 'en' ? number : number.replace('.', ',')
}
