/*
Made by src/reading/make/english-exceptions.ts from the CMU Pronouncing Dictionary (npm cmu-pronouncing-dictionary 3.0.0): words that the rules
count otherwise. Its notice, as copies of the dictionary carry it:

Copyright (C) 1993-2015 Carnegie Mellon University. All rights reserved.

Redistribution and use in source and binary forms, with or without modification, are permitted provided that the following conditions are met:

1. Redistributions of source code must retain the above copyright notice, this list of conditions and the following disclaimer. The contents of
   this file are deemed to be source code.

2. Redistributions in binary form must reproduce the above copyright notice, this list of conditions and the following disclaimer in the
   documentation and/or other materials provided with the distribution.

This work was supported in part by funding from the Defense Advanced Research Projects Agency, the Office of Naval Research and the National
Science Foundation of the United States of America, and by member companies of the Carnegie Mellon Sphinx Speech Consortium. We acknowledge the
contributions of many volunteers to the expansion and improvement of this dictionary.

THIS SOFTWARE IS PROVIDED BY CARNEGIE MELLON UNIVERSITY "AS IS" AND ANY EXPRESSED OR IMPLIED WARRANTIES, INCLUDING, BUT NOT LIMITED TO, THE
IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE DISCLAIMED. IN NO EVENT SHALL CARNEGIE MELLON UNIVERSITY NOR ITS
EMPLOYEES BE LIABLE FOR ANY DIRECT, INDIRECT, INCIDENTAL, SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT LIMITED TO, PROCUREMENT
OF SUBSTITUTE GOODS OR SERVICES; LOSS OF USE, DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER CAUSED AND ON ANY THEORY OF LIABILITY, WHETHER IN
CONTRACT, STRICT LIABILITY, OR TORT (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE OF THIS SOFTWARE, EVEN IF ADVISED OF THE
POSSIBILITY OF SUCH DAMAGE.
*/

const wordsByCount: readonly (readonly [number, string])[] = [
  [
    1,
    `aches aisle ants baas barred barres boar choirs ciao cites doer dower drawer forts grahams groin isle lei mien morgue passed prayer psyched
    reeve reined rials sires sirs skier warez`,
  ],
  [
    2,
    `abbe abbey abed ac acme acne ague alehouse alewife alewives ante anted apelike aspirin attached attired av ave aver averaged awestruck
    awfully bachelors backaches barefoot barre barring bivouac bloodshed blueness bluest bluish boa bonier bracelet braziers breastfed breezeway
    bridgehead buffeted buoy buoying business bustier cafe carriage cashier cashiered catholic chocolate choir cited citing city cliche cliches
    clothier coaches coaxing coed coeds coleslaw collier colonel comeback comedown cordial cranial crocheted crooked cruelest cruelly cruelty
    cutesy dahlia darnedest deathbed debuted desperate devilish diamond diaper dieter doers dossier dueling dukedom dyestuff eavesdrop ebbed
    elsewhere embed emerald evening eyeing falsehoods filename finals fired flatbed flours foliage forego forte forty freer freest frontier
    fruiting fruity fueling genial genius gimme giveback glacier gooey guinea harebrained headaches henceforth hereby herewith herpes hired
    hodgepodge hooey hopefuls horehound hotbed hotbeds ideal ids interest joey kaolin krone kroner kronor lagniappe latte latter legged lemme
    lemming lifestyle lire liveried livestock lukewarm marriage maybe metier midyear mincemeat molehill mores muenster naive naked nauseous
    nineties ninety nisei noel nonesuch omelet oneself onetime opera paean passe passer passes passing passion passive pharaoh phaseout phoebe
    phooey platinum polecat ponce posse posses prayerful preaches premier premiered premieres prier privilege psyche psyches pyre quaffed ragged
    rainier rapeseed reaches really rearm reining retire rhea righteous risque riyals rugged safeties safety sagebrush saucepan saute sauteed
    scapegoat scion scoured scours scrivener seabed seance several shoveling sinuous sire skiers snarled soldier someone sophomore soured
    sovereign spadework squires suiting sumptuous sundial takeoff temperate testes theatrics thenceforth theorem theory thereby thereof thereon
    thereto tilde tire tiring toniest transient trendier trendiest truest tsetse unctuous unwed vacuum vacuumed vacuums vaguely vagueness
    valiant vaudeville viceroy visuals whereas whereby whitener whorehouse wicked wildflowers wiretaps woodshed woodsheds wretched yeoman`,
  ],
  [
    3,
    `aboveboard abs acquiesce acquire acquiring acreage admired adobe aforesaid aforethought albeit alienate aliyah allele ammonia andante animal
    anime animist anion anyone archetypal aspires assiduous atheism attache attaches attaching attachment attire averages averaging azalea baa
    backfired backfires balboa baptistery batiste battalion beautifully beforehand begonia beverages bombardier bonfire boolean bouillon
    brigadier businesses cabinetry campfire canape canoeist carriages carryover caseloads cassia cation cavalier caveat chandeliers chevalier
    chihuahua circumference cit cochlear coequal colorfully concierge conduit conferencing congenial consortia conspire conspiring convenience
    convenient cooperage copiously coyote crookedness curacao curare cyclist decorative defiance deify deities desires devour diapers dieters
    differently dioceses ebullience ebullient elaborate embedded embedding embryo embryos empire ems ennui entire espalier especially excellency
    expires faceted facetious familial familiar fealty fiance fiery figurehead finale finalist finalize finally financier firebrand firebrick
    firebug firedamp firefly firehouse fireplace fireplaces fireproof fireside flamenco foregoing fuselage fustian ganglion gardenia gentlest
    ghettoize giggly gondolier hardwired heretofore hierarchies hoteliers hourglass humblest imagery imbroglio impetuous impoverish incestuous
    inchoate indifferent inertia infrared ingenious inquired inquires insouciant inspired intaglio intuit karate laity latecomer latticework
    leniency leniently leveraging likelihood lineage linguine littlest livelihood lovemaking machete macrame magnolia marchioness marriages
    messiah militia ministering miscreant misfire moreover nepenthe newlywed newlyweds ninetieth nostalgia nucleic nuncio nuzzling oboist otiose
    overfed oversea parliament passable passageway peculiar peyote physio picante piety pirouette pleonasm pneumonia posterior powerfully
    praiseworthy premiering preponderance prescience prescient principally promiscuous prosciutto protean protege proteges pursuant quagmire
    quiescent quietly quinoa raggedy reabsorb reacquire reagent realism realty recipe recital recovery recruiting regalia requiem resilient
    retirements reveille rewire ricocheted riverbed roseate rte ruggedly salesmanship salespeople salesperson sapiens sapphire satire satirist
    satirize sauerkraut scouring scuffling sesame shamanism sightseer signore silhouette socialite soldiering solely soloist souring sovereignty
    spokespeople spokesperson stablest statuesque statuette subtly superfluous syncope tamales temperament temperature tiara ticklish tireless
    tirelessly tiresome tracheal transients transpire tribalism twinkly umpire undersea unforeseen unreasoning username vacuuming valuable
    varietal vaudevillian vegetable vehement visualize visually wannabe wannabees waterbed waterbeds watershed watersheds wickedly wickedness
    wiggly wildfire wiretap wobbly wretchedly yarmulke yesteryear`,
  ],
  [
    4,
    `abalone accompaniment acquiescence acquiescent adagio aforementioned agreeable agribusiness alienates ameliorate amnesiac animism anopheles
    antipodes apostrophe apprenticeships arguable asap associative athleticism auxiliary bacchanalia backfiring beatify behavioral behaviorist
    bestiality biennial calliope catastrophe cavalierly coinsurance commemorative communique complementary conceptualize conscientious
    contemptuously cooperatives cuneiform desirable desperately desperation devilishly diabetes diamante diastole disinterest disinterested
    elaborates elementary emotionally epithelial epithelium epitome epitomize etc ethically evacuee excelsior facsimile fettuccine finality
    firebombing firecracker firefighters firelighter foreseeable genitalia guacamole hacienda herculean hierarchical hymeneal hyperbole
    idealized idealizes idealizing inconspicuous initiative inquiries inquiring intemperate intermarriage intuition intuitive isosceles jeroboam
    jingoistic kamikaze karaoke laboratory laryngeal lesbianism malathion mammalian marijuana massacring materiel messianic metrically
    minestrone miniaturize minutiae mortification mustachio naivete neoplasm neuroscience nevertheless nucleation obscenely oceanic oncogenes
    overpowering overseer patrimonial pedophilia philately pistachio pitiable postmodernism presumptuous protozoa protozoan pseudoscience
    realization rearmament recoveries rediscovery refueling resiliency retirement satisfactory seniority serenely statesmanlike sukiyaki
    supremely surrealism surrealistic tactically teleconference teriyaki theatergoer theologians traditionalists ukulele undercarriage
    underprivileged unethically unexpired unrealistic unrealized unreasonable varietals vehemently vestigial veterinary vigilante virtuoso
    zoologist zoology`,
  ],
  [
    5,
    `aboriginal aborigine absenteeism aleatory algorithmic alienated alienating alienation allegiances ambiguities angioplasty aphrodisiac
    braggadocio cooperatively elaborated elaborating elaboration epicurean esophageal geniality heterogeneous inalienable incrementalism
    intrauterine memorabilia motorcyclist oleaginous paraphernalia parimutuel parliamentary pituitary politically rebelliousness retaliatory
    spiritualism theologian transoceanic tuberculosis unanimity unforeseeable unreasonably veterinarian vigilantism virtuosity visualization`,
  ],
  [
    6,
    `conceptualization congeniality extraordinarily intelligentsia osteoarthritis parliamentarian peculiarity piezoelectric religiosity
    revaluations unrealistically unsatisfactory videoconferencing`,
  ],
]

/** Syllables of words, in small letters, that the rules count otherwise. */
export const exceptions: ReadonlyMap<string, number> = new Map(
  wordsByCount.flatMap(([count, words]) => words.split(/\s+/).map((word) => [word, count] as const)),
)
