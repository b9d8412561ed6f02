/** Tells what a build is doing: one line that is rewritten on a terminal, plain lines elsewhere. */
export interface Progress {
  step(text: string): void
  done(text: string): void
}

export function startProgress(stream: NodeJS.WriteStream = process.stderr): Progress {
  const live = stream.isTTY === true
  let began = performance.now()
  let open = false
  const close = () => {
    if (!open) return
    const seconds = ((performance.now() - began) / 1000).toFixed(1)
    stream.write(live ? `  ${seconds} s\n` : '')
    open = false
  }
  return {
    step(text) {
      close()
      began = performance.now()
      open = true
      stream.write(live ? `  ${text} …` : `${text}\n`)
    },
    done(text) {
      close()
      stream.write(`${text}\n`)
    },
  }
}
