import { wordSet } from './word-set.ts'

/** Nouns of machines. A row of names is only counted where each of its words is known to be one. */
export const nouns = wordSet(`
  access accumulator action actuator adapter adaptor adjustment air alarm alignment alloy aluminium aluminum ambient amplifier anchor angle anode
  antenna aperture apron area arm armature assembly attachment axis axle bag balance ball bar base basin basket batch battery beam bearing bed bell
  belt bench bend bin blade blank block blower board body boiler bolt boot booster boss bottle box bracket brake branch brass breaker bridge brine
  brush bucket buffer building bulb bulkhead bumper burner burr bus bush bushing button cabinet cable cage calibration caliper cam camera cap
  capacitor capacity carbon card carriage carrier cartridge case casing casting catch cavity ceiling cell chain chamber change changeover channel
  charge charger chart chassis check chemical chiller chip chuck chute circle circuit circulation clamp clamping cleaning clearance clip clock
  closure cloth clutch coating code coil collar collector column combustion command compartment component compression compressor computer
  concentration condensate condenser condition conduit cone configuration connection connector console contact contactor container contamination
  control controller conveyor coolant cooler cooling core corner corrosion counter counterweight coupler coupling cover crane crank crankshaft crate
  cup current curtain cushion cut cutter cutting cycle cylinder damage damper data date deck deflector delay delivery density depth detection
  detector detergent device dial diagram diaphragm die diesel diode direction disc discharge disconnect disconnector dish disk display distance
  distribution distributor diverter dock door dosing drain drainage drawer drawing drill drive drum duct dust ear edge ejector electrode element
  elevator emergency enclosure encoder end energy engine entry environment equipment error evaporator exchanger exhaust exit expansion extension
  extractor eye face failure fan fastener fault feed feedback feeder fibre field filament file fill filler filling film filter finger fitting
  fixture flame flange flap flash flask flow fluid flush flywheel foam foil foot force fork format foundation frame frequency friction fuel function
  funnel furnace fuse gap gas gasket gate gauge gear gearbox gearmotor generator gland glass glove glue goods governor grease grid grille grinder
  grip grommet groove ground group guard guide gun hammer handle handling handwheel hatch hazard head header heat heater heating height hinge hoist
  holder hole hood hook hopper horn hose hour housing hub humidity ice idler ignition impeller impulse index indicator infeed information inlet
  input insert inspection installation instruction instrument insulation insulator interface interlock inverter iron isolator item jack jacket jaw
  jet jib job joint journal junction key keyboard keypad knife knob label ladder lamp lane latch layer layout lead leak leakage leg length lens
  level lever lid lift light lighting limit line liner lining link linkage liquid list load loader loading location lock lockout locknut log loop
  lubricant lubrication machine magazine magnet mains maintenance manifold manual margin mark marker mask mass mast material measurement mechanism
  medium membrane memory menu mesh message metal meter mill mirror mixer mixing mode module monitor monitoring motion motor mould mount mounting
  movement muffler multimeter nail name nameplate neck needle net network nitrogen noise nozzle number nut office oil oiler opening operation
  operator option order orifice oscillator outfeed outlet output oven overflow overload oxygen packaging packing pad pallet pan panel part particle
  partition pass paste path pattern pawl pedal pedestal performance phase photocell pin pinion pipe pipework piping piston pit pitch pivot place
  plan plant plastic plate platen platform plug plunger pocket point pointer pole position post potentiometer powder power preload pressure probe
  procedure process processor product production profile program programme project propeller protection protector proximity pulley pulse pump punch
  purge push pusher quality quantity rack radiator radius rail railing ram ramp range rate ratio reactor reader reading receiver record rectifier
  reducer reel reference reflector refrigerant refrigeration regulator relay release relief repair report reservoir residue resistance resistor
  resolver response restrictor retainer return reversal ribbon rim ring rinse rivet robot rod roll roller roof room rope rotation rotor row rubber
  rule safety sample saw scale scanner schedule scraper screen screw screwdriver seal sealant seam seat section sector selector semiconductor sender
  sensing sensor separator sequence series service servo set setpoint set-point setting set-up setup shaft shape sheath sheave sheet shelf shell
  shield shift shim ship shock shoe shop shutdown shutter sieve sign signal silencer sink site size skid sleeve slide sling slot sludge smoke socket
  software solenoid solution solvent source space spacer spacing span spanner spare speed spindle spline spool spot spray spreader spring sprocket
  squeegee stack stacker stage stainless stand standard standby start starter start-up state station stator status steam steel stem step stiffener
  stock stone stop stopper storage strainer strand strap strip stroke structure stud suction sump supply support surface surge suspension swarf
  switch switchgear symbol system tab table tachometer tag tail tank tap tape target task tee temperature tension tensioner terminal test tester
  thermocouple thermometer thermostat thickness thread throat throttle thrust tightening timer timing tip tire title tolerance tool tooling tooth
  torque track trailer transducer transfer transformer transmission transmitter transport trap travel tray treatment trigger trip trolley trough
  truck tube tubing tunnel turbine turn turntable type tyre unit unloader utility vacuum valve vane vapour vapor vehicle vent ventilation ventilator
  venting vessel vibration vice viscosity voltage volume wall warning wash washer waste water wave wax wear web wedge weight weld welding wheel
  width winch winding window wing wire wiring wiper wood work workbench workpiece workshop worm wrench yoke zone
`)

/** Plurals in `-s` of the list end a name; these words end in `-s` and are singular. */
export const singularInS = wordSet(
  'access brass bus chassis gas glass mass pass process axis radius series status apparatus bypass stainless goods mains press cross lens',
)
