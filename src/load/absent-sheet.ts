import type { Sheet } from '../model/machine.ts'
import { startOfFile } from '../source/place.ts'

/** A sheet of the register that has no file, or one that cannot be read. */
export function absentSheet(number: number, file: string, exists: boolean): Sheet {
  return {
    number,
    file,
    place: startOfFile(file),
    exists,
    readable: false,
    svg: () => '',
    viewBox: { x: 0, y: 0, width: 0, height: 0 },
    texts: [],
  }
}
