import { wordSet } from './word-set.ts'

const everybody = wordSet('OK ON OFF LED USB PC PIN ID TV DC AC CE ISO IEC EN UV PVC SMS GPS QR CD DVD PDF A4 A3 SOS EU UK US USA UTC CEST AM PM')
const forMaintenance = wordSet(`
  NA CC CA EPI VDC VAC PLC HMI PE NO NC CO COM GND IP I/O IO AI AO DI DO PNP NPN LOTO PPE RPM LAN ISO VG SAE NLGI ANSI OSHA ASME NFPA DIN NEMA UL
  EMC ESD EPDM NBR PTFE PUR RTD NPT BSP UPS LCD SSR MCB RCD
`)
const forEngineers = wordSet(`
  CPU RAM ROM IR AWG API TCP UDP HTTP HTTPS FTP DHCP DNS MAC VLAN VPN SSH OPC UA SCADA MES ERP SQL XML JSON CSV PID PWM SIL PL STO SS1 SS2 SLS SBC
  SOS VFD EMI RFI RMS THD TN TT RFID CAN OSSD FMEA MTBF MTTR MTTF DC PFH PFD CAD CAM CNC NEC SCCR FLA LRA CT PT OEM EEPROM SSD HDD RTC NTP CRC ASCII
`)

/** Abbreviations that need no words beside them for a reader. Common practice; a machine's glossary adds its own. */
export const commonAbbreviations = {
  operator: everybody,
  maintenance: new Set([...everybody, ...forMaintenance]),
  engineer: new Set([...everybody, ...forMaintenance, ...forEngineers]),
} as const satisfies Record<string, ReadonlySet<string>>

/** Words that stand in capitals on machines and their screens; they are no abbreviations. */
export const capitalWords = wordSet(`
  ON OFF MAX MIN STOP START RESET RUN OPEN CLOSE CLOSED SHUT AUTO MANUAL MAN JOG SLOW FAST FULL EMPTY HIGH LOW UP DOWN IN OUT LEFT RIGHT YES NO NOT
  NEVER AND OR DO THE ALL DANGER WARNING CAUTION NOTICE NOTE FIRST ONLY MUST HOT COLD EXIT ENTER ESC HOME END SET TEST TRIP TRUE FALSE LIVE DEAD
  SAFE READY FAULT ERROR ALARM EMERGENCY HOLD MAIN MAINS AIR WATER OIL SÍ PELIGRO ATENCIÓN AVISO PARO MARCHA ABRIR CERRAR NUNCA SOLO EIN AUS HALT
`)
