const line = (width: number, d: string, colour = '#000000') =>
  `<path d="${d}" fill="none" stroke="${colour}" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`
const white = '#ffffff'
const yellow = '#f9a800'
const blue = '#005387'

/** ISO 7010 code -> our own drawing of its meaning, in a square of 100, without shape and ground of the sign. */
export const pictograms: Readonly<Record<string, string>> = {
  // An open book with an i.
  M002: `<path d="M22 30c10-4 20-3 27 2v44c-7-5-17-6-27-2zM78 30c-10-4-20-3-27 2v44c7-5 17-6 27-2z"/><path d="M62 38h5v5h-5zM62 46h5v18h-5z" fill="${blue}"/>`,
  // A head with muffs.
  M003: `<path d="M33 45a17 19 0 1 1 34 0v14a17 20 0 0 1-34 0z"/>${line(6, 'M28 46a22 24 0 0 1 44 0', white)}<rect x="22" y="42" width="11" height="22" rx="5"/><rect x="67" y="42" width="11" height="22" rx="5"/>`,
  // A head with goggles.
  M004: `<path d="M31 46a19 23 0 1 1 38 0v14a19 22 0 0 1-38 0z"/><rect x="26" y="41" width="48" height="17" rx="6" fill="${blue}"/><rect x="30" y="44" width="17" height="11" rx="4"/><rect x="53" y="44" width="17" height="11" rx="4"/>`,
  // A gauntlet.
  M009: `<path d="M36 78V58L26 46a4 4 0 0 1 6-5l7 7V27a4 4 0 0 1 8 0v17h1V22a4 4 0 0 1 8 0v22h1V25a4 4 0 0 1 8 0v20h1V32a4 4 0 0 1 7 0v24c0 6-4 9-5 13v9z"/><path d="M34 71h36v3H34z" fill="${blue}"/>`,
  // A head behind a shield.
  M013: `<path d="M32 42a18 20 0 0 1 36 0z"/>${line(5, 'M28 42h44', white)}<path d="M31 48h38v14a19 20 0 0 1-38 0z"/><path d="M37 53h26v8a13 14 0 0 1-26 0z" fill="${blue}"/>`,
  // A switch that is open, with its plug pulled.
  M021: `${line(6, 'M18 62h18M64 62h18M36 62 60 36', white)}<circle cx="36" cy="62" r="6"/><circle cx="64" cy="62" r="6"/>`,
  // A closed padlock.
  M028: `${line(8, 'M36 48V36a14 14 0 0 1 28 0v12', white)}<rect x="27" y="46" width="46" height="32" rx="4"/><path d="M50 54a5 5 0 0 1 2.5 9.300V71h-5v-7.700A5 5 0 0 1 50 54z" fill="${blue}"/>`,
  // A hand that reaches to a surface.
  P010: `<path d="M42 70V56L30 45a4 4 0 0 1 6-5l8 6V28a3.5 3.5 0 0 1 7 0v15h1V24a3.5 3.5 0 0 1 7 0v19h1V28a3.5 3.5 0 0 1 7 0v27c0 5-3 8-4 11v4z"/><path d="M30 74h40v5H30z"/>`,
  W001: '<path d="M45.5 36h9l-2 26h-5zM50 67a5 5 0 1 1 0 10 5 5 0 0 1 0-10z"/>',
  // A figure that slips on a wet floor.
  W011: `<circle cx="42" cy="43" r="4.5"/>${line(4.5, 'M44 50 50 62 60 58M47 55l10-5M46 54l-9 6M50 62 42 70')}${line(3, 'M26 77c5-4 8 4 13 0s8 4 13 0 8 4 13 0')}`,
  // A bolt.
  W012: '<path d="M55 32 39 59h9l-5 13-4-2 4 12 10-8-4-1 12-21h-9l8-20z"/>',
  // A load on a hook.
  W015: `${line(3.5, 'M50 28v12M50 40l-13 14M50 40l13 14')}<rect x="34" y="54" width="32" height="20"/>`,
  // Heat over a surface.
  W017: `<rect x="27" y="73" width="46" height="6"/>${line(3.6, 'M38 68c-4-5 4-8 0-14M50 68c-5-7 5-11 0-19M62 68c-4-5 4-8 0-14')}`,
  // A wheel that begins to turn by itself.
  W018: `${line(4, 'M37 70a17 17 0 1 1 26 0')}<path d="M69 66 59 76l-2-11z"/><path d="M47 50h6v19h-6z"/><circle cx="50" cy="60" r="8"/><circle cx="50" cy="60" r="3" fill="${yellow}"/>`,
  // A body between two walls.
  W019: `<rect x="26" y="54" width="9" height="25"/><rect x="65" y="54" width="9" height="25"/><circle cx="50" cy="43" r="6"/><path d="M44 52h12v15h-2v12h-8V67h-2z"/>${line(3, 'M35 66h5M65 66h-5')}`,
  // A blade and a finger.
  W022: `<path d="M30 54h28l10 6-10 3H30z"/><path d="M42 67h20a4 4 0 0 1 0 8H42z"/>${line(2.5, 'M66 67v7')}`,
  // A tube that drips on a surface and eats it.
  W023: '<path d="m37 43 24-6 2 7-24 6z"/><path d="M40 54c-2 3-3 5-3 6a3 3 0 0 0 6 0c0-1-1-3-3-6zM57 51c-2 3-3 5-3 6a3 3 0 0 0 6 0c0-1-1-3-3-6z"/><path d="M25 72h9l3 4 4-2 3-2h6l3 4 5-3 3-1h14v7H25z"/>',
  // A hand under a plate that comes down.
  W024: '<path d="M38 46h24v7H38zM47.5 33h5v8h4L50 47l-6.5-6h4z"/><path d="M29 62h14l12-2a3.5 3.5 0 0 1 1 6h14a3.5 3.5 0 0 1 0 7H29z"/><path d="M27 76h46v4H27z"/>',
  // Two rollers that turn towards each other, and a hand.
  W025: `<circle cx="50" cy="43" r="9"/><circle cx="50" cy="71" r="10"/><circle cx="50" cy="43" r="3" fill="${yellow}"/><circle cx="50" cy="71" r="3.5" fill="${yellow}"/><path d="M22 77 34 59l13-3a2 2 0 0 1 1 4l-9 4-9 13z"/>${line(2.5, 'M66 66a17 17 0 0 1 0 10')}`,
  // Things that fall towards a head.
  W035: `<path d="M42 38h9v7h-9zM53 47h9v7h-9zM37 51h8v7h-8z"/><circle cx="50" cy="67" r="5.5"/><path d="M38 82a12 9 0 0 1 24 0z"/>`,
  // A horn.
  W038: `<path d="M33 59h7l12-11v29L40 67h-7z"/>${line(3.5, 'M57 55a9 9 0 0 1 0 15M63 50a16 16 0 0 1 0 25')}`,
  // A vessel with vapour.
  W079: `<path d="M35 60h30l-3 20H38z"/>${line(3.2, 'M42 55c-3-4 3-6 0-11M50 55c-4-6 4-9 0-16M58 55c-3-4 3-6 0-11')}`,
}
