import type { ChildProcess } from 'node:child_process'

/** A module to import into a process, which then tells a number whenever it is asked: what the expression gives. */
export const answers = (expression: string): string =>
  `data:text/javascript,${encodeURIComponent(`process.on('message',()=>{process.send(${expression})});process.channel.unref()`)}`

/** Asks a process that has imported `answers`. */
export const ask = (child: ChildProcess): Promise<number> =>
  new Promise((done) => {
    child.once('message', (number) => done(Number(number)))
    child.send('ask')
  })

/** Interrupts a process as a person does, and waits for its end. */
export const interrupt = (child: ChildProcess): Promise<void> =>
  new Promise((done) => {
    child.once('exit', () => done())
    child.disconnect()
    child.kill('SIGINT')
  })
