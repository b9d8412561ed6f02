import type { MessageForm } from '../hazard/panel.ts'
import type { MachineFile } from '../model/schema/machine-file.ts'

/** How the safety messages of a machine look: as its machine.yaml says, else as ANSI Z535.6 has them. */
export const messageForm = ({ safetyMessages }: MachineFile): MessageForm => safetyMessages?.form ?? 'z535'
