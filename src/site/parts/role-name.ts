import { speakInput } from '../../model/words.ts'
import type { Context } from '../context.ts'

/** What a role of training.yaml is called in the language of the page; its id where the file does not have it. */
export function roleName({ machine, language }: Pick<Context, 'machine' | 'language'>, id: string): string {
  const role = machine.training.roles.find((it) => it.id === id)
  return role ? speakInput(role.name, language, machine.sourceLanguage).text : id
}
