import type { Rule } from '../rule.ts'

export const notFitted: Rule = {
  id: 'not-fitted',
  severity: 'error',
  summary: 'A page or row that is kept names something that this unit does not have.',
  why: 'The reader is sent to a device, part or page that is not on this machine.',
  source: 'house rule',

  *check({ references, absent, unit, options }) {
    for (const { kind, id, place } of references) {
      const gone = absent.get(`${kind}:${id}`)
      if (gone?.reason !== 'left-out') continue
      // An option that nobody declared is reported where it stands.
      if (gone.fits.some((option) => !options.has(option))) continue
      yield {
        message: `\`${id}\` is not fitted to serial no. ${unit.serial}`,
        place,
        related: [
          {
            label:
              gone.fits.length > 0
                ? `it is kept for ${gone.fits.map((option) => `\`${option}\``).join(', ')} only`
                : 'it fits no device of this unit',
            place: gone.place,
          },
        ],
        help: gone.fits[0]
          ? `put it in \`<Fitted option="${gone.fits[0]}">\`, or give the page or row the same \`fits\``
          : 'remove the reference, or give the page the option under `fits`',
      }
    }
  },
}
