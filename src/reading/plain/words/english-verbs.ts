import { wordSet } from './word-set.ts'

/** Base forms with which a step tells people what to do, and which are no noun or adjective beside it. */
export const pureVerbs = wordSet(`
  accept acknowledge acquire activate actuate add adhere adjust advance align allow analyse analyze apply arrange ascertain ask aspirate assemble
  assess assign attach attempt authorise authorize avoid be become begin bleed bring build buy calculate calibrate cancel carry choose close collect
  combine come commence compare comply compress configure confirm connect consider construct consult continue convert coordinate correct create
  crimp de-energise de-energize deactivate deburr decant decide decommission deenergise deenergize define deflate defrost degrease delete
  demagnetise demagnetize depress depressurise depressurize derate descale describe deselect designate detach determine diagnose dilute disable
  disassemble discard disconnect disengage disinfect dismantle dispose disregard dissolve distribute divide do eject eliminate employ enable
  energise energize engage ensure enter erase erect establish evacuate evaluate examine exclude execute expand explain expose extend fasten fetch
  fill find flatten flush follow gain gather get give go grab grasp halt harden identify ignore immerse implement inflate inform inhale initialise
  initialize initiate inject insert inspect install instruct insulate interpret interrupt introduce invert investigate isolate join keep lean learn
  leave let listen loosen lubricate maintain make manage manipulate maximise maximize memorise memorize minimise minimize modify moisten navigate
  neutralise neutralize notify obey observe obstruct obtain omit open operate orient overhaul perform permit pick pierce pour prepare pressurise
  pressurize prevent prise protect prove provide pry put quit reach rearm reassemble reattach recharge recirculate recommend recommission reconnect
  recover recycle reduce refer refill refit regulate reinforce reinstall reject relieve remember remove renew repeat replace replenish reposition
  resolve respond restore restrain restrict resume retain retighten retract retrieve reuse rotate say see seek segregate select send separate sever
  sharpen show silence simulate slacken smear smooth snap soak soften solder specify splice squeeze stabilise stabilize stir stow straighten
  submerge substitute subtract supervise suppress suspend synchronise synchronize take tamper tell terminate throw tighten toggle transfer translate
  transmit tuck unblock unbolt uncoil uncouple uncover understand undo unfasten unhook uninstall unload unlock unpack unplug unroll unscrew untie
  unwind unwrap update upgrade upload utilise utilize validate vary ventilate verify walk warn weigh withdraw withhold write
`)

/** Base forms that are a noun or an adjective too: "drain", "seal", "clean". What follows decides. */
export const nounVerbs = wordSet(`
  act address aim air anchor answer bag balance bar bend block blow boil bolt boot brace bracket brake break bridge brush bypass cable call cap
  catch center centre chain change charge check chock circle clamp clean clear click clip coat code command contact control cool copy count couple
  cover crack crank cross cure cut cycle damage damp date decrease demand detail dial dip direct discharge display document dose double download
  drag drain draw drill drive drop dry dust ease empty estimate exchange exercise exit extract face feed feel file filter finish fire fit fix flag
  flare flick flip flood flow focus fold force form frame free freeze function fuse gauge glue grade grease grind grip ground group guard guide
  hammer hand handle hang heat help hit hoist hold hook hose inch increase index input interlock jack jam jog jump jumper key kick knock label land
  lay lead level lift light limit line link list load lock lockout log look loop lower machine map mark mask match measure meet mix monitor mop
  mount move name neutral nip note offset oil order output overlap override pad paint pair pan parallel park pass paste patch pause peel pin pinch
  pipe pitch pivot place plan plane plug point polish pop position post power practice practise praise preload press prime print probe process
  program prop protest pull pulse pump punch purge push quench queue rack raise ramp range rate read record relay release remedy rename repair
  report request rescue reserve reset rest restart result return reverse ring rinse rivet rock roll round route rub rule run sample save scan scoop
  scrap scrape scratch screw scroll seal search seat secure sense service set shade shake shape share shield shift shim shut sign signal sit site
  size skim skip slide slot slow snug sort sound spare spin split spot spray spread spring square stack stake stamp stand start state stay steam
  step stick stop store strap stress stretch strike string strip study supply support survey swap sweep swing swipe switch tack tag tap tape tare
  teach tear tension test thread throttle tie tilt time tip tool top torque touch tow trace track train transport trap treat trigger trim trip trust
  try tune turn twist type use vacuum vent view visit wait warm wash watch water wear wedge weld wet wind wipe wire work wrap zero zoom
`)

/** Words in `-ed` that are no participle, and words of the same end that are no verb form. */
export const noParticiples = wordSet(`
  red bed feed need speed seed weed bleed breed shed sled hundred indeed instead ahead infrared naked wicked rugged aged sacred beloved exceed
  proceed succeed overspeed underspeed led lead
`)

/** Past participles that do not end in `-ed`. */
export const irregularParticiples = wordSet(`
  beaten become begun bent bitten bled blown bought bound broken brought built burnt burst caught chosen come cut dealt done drawn driven fallen fed
  felt fitted forbidden found frozen given gone ground grown heard held hidden hit hung hurt kept known laid led left lent let lit lost made meant
  met overrun paid proven put read rebuilt redrawn reset rewound run said seen sent set sewn shaken shorn shown shrunk shut slid spent split spread
  spun stood struck stuck sunk swept swung swollen taken taught thrown told torn undone unwound upset wiped withdrawn won worn wound woven written
`)

/** Participles that tell how a thing is: "the door is closed", "it must be locked". */
export const stateParticiples = wordSet(`
  aligned bent blocked broken charged clogged closed connected corroded covered cracked damaged discharged disconnected done earthed energised
  energized engaged exposed fastened finished fitted fixed grounded heated hidden inserted installed insulated interlocked isolated jammed lit
  loaded located locked lost marked mounted overloaded pressed pressurised pressurized scored sealed seated secured set shut soiled stopped stuck
  switched torn twisted used wedged wired worn
`)

/** Verbs whose third person in `-s` is no plural of a noun beside it. */
export const finiteForms = wordSet(`
  is are was were has have had must can cannot may might should shall will would does did needs means becomes opens closes holds keeps shows starts
  stops gives takes goes comes makes lets leads brings sends resets connects contains consists protects prevents supplies operates moves runs turns
  stands sits depends belongs carries drains fills heats cools presses pushes pulls lifts lowers raises reads tells happens remains stays follows
  fits serves feeds
`)
