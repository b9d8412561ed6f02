const telling = `data:text/javascript,${encodeURIComponent(
  "import{isMainThread}from'node:worker_threads';if(isMainThread)process.on('exit',()=>process.stderr.write('\\npeak '+process.resourceUsage().maxRSS+'\\n'))",
)}`

/** Environment in which every process of Node tells its largest resident memory when it ends. */
export const reportingPeaks: Readonly<Record<string, string>> = { NODE_OPTIONS: `--import=${telling}` }

/** What they told, in MB. */
export const peaksIn = (stderr: string): number[] => [...stderr.matchAll(/^peak (\d+)$/gm)].map(([, kb]) => Number(kb) / 1024)
