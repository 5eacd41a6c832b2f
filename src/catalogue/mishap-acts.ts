/** For each mishap the codes of its sentences, in order: what to do now, what then, and what never. */
import type { MishapId } from './mishaps.ts'

export type MishapActs = {
  /** How it is known, in one line. */
  readonly see: string
  /** Within minutes, in this order. */
  readonly now: readonly string[]
  /** In the hours after. */
  readonly after: readonly string[]
  readonly never: readonly string[]
}

const acts = (
  see: string,
  { now, after, never }: { readonly [Part in 'now' | 'after' | 'never']: readonly string[] },
): MishapActs => ({ see, now, after, never })

export const mishapActs: Readonly<Record<MishapId, MishapActs>> = {
  eyeSplash: acts('mishap.eyeSplash', {
    now: ['mishap.rinseEye', 'mishap.lensesOut', 'mishap.callPoison', 'mishap.sheetAlong'],
    after: ['mishap.doctorAnyway', 'mishap.writeDown'],
    never: ['mishap.neverRub', 'mishap.neverNeutralise', 'mishap.neverDriveSelf'],
  }),
  unwell: acts('mishap.unwell', {
    now: ['mishap.outToAir', 'mishap.callIfBreath', 'mishap.sitUp', 'mishap.clothesOff', 'mishap.stopPot'],
    after: ['mishap.stayWith', 'mishap.noMoreExposure', 'mishap.writeDown'],
    never: ['mishap.neverGoInAfter', 'mishap.neverVomit', 'mishap.neverBackToday'],
  }),
  onSkin: acts('mishap.onSkin', {
    now: ['mishap.clothesOff', 'mishap.soapWater', 'mishap.doctorIfBurn'],
    after: ['mishap.noMoreExposure', 'mishap.writeDown'],
    never: ['mishap.neverThinnerOnSkin'],
  }),
  smoke: acts('mishap.smoke', {
    now: ['mishap.everyoneOut', 'mishap.callFire', 'mishap.smallOnly', 'mishap.gasOff'],
    after: ['mishap.ragsApart', 'mishap.writeDown'],
    never: ['mishap.neverBackIn', 'mishap.neverWaterOnSolvent'],
  }),
  spill: acts('mishap.spill', {
    now: [
      'mishap.sparksOff',
      'mishap.airThrough',
      'mishap.damSpill',
      'mishap.catalystSpill',
      'mishap.bilgeToo',
    ],
    after: ['mishap.wasteOutside', 'mishap.cleanSplashes'],
    never: ['mishap.neverDrain', 'mishap.neverSawdust'],
  }),
  potKicks: acts('mishap.potKicks', {
    now: [
      'mishap.putDown',
      'mishap.smokesLeave',
      'mishap.potOutside',
      'mishap.spreadThin',
      'mishap.keepAway',
      'mishap.nextPotSmaller',
    ],
    after: ['mishap.binWhenCold', 'mishap.finishAtCorner'],
    never: ['mishap.neverLid', 'mishap.neverWaterInPot', 'mishap.neverThinHotPot', 'mishap.neverHold'],
  }),
  potOnHull: acts('mishap.potOnHull', {
    now: ['mishap.stopRolling', 'mishap.wipeFresh', 'mishap.freshTools', 'mishap.nextPotSmaller'],
    after: ['mishap.airThenAgain', 'mishap.sandThenAgain'],
    never: ['mishap.neverThinHotPot', 'mishap.neverStretch'],
  }),
  runs: acts('mishap.runs', {
    now: ['mishap.tipOutRun', 'mishap.lessPaint', 'mishap.leaveTacky'],
    after: ['mishap.shaveRun', 'mishap.blockSpots'],
    never: ['mishap.neverSandSoft', 'mishap.neverThinnerOnBrush'],
  }),
  craters: acts('mishap.craters', {
    now: ['mishap.stopRolling', 'mishap.wipeWet', 'mishap.cleanAgain', 'mishap.tryPatch'],
    after: ['mishap.airThenAgain', 'mishap.belowCraters'],
    never: ['mishap.neverPaintOver', 'mishap.neverSilicone'],
  }),
  brushMarks: acts('mishap.brushMarks', {
    now: ['mishap.stopTipping', 'mishap.coolSide', 'mishap.thinnerCapful', 'mishap.smallerPatch'],
    after: ['mishap.sandAllThenCoat'],
    never: ['mishap.neverSecondTip', 'mishap.neverThinnerOnBrush'],
  }),
  orangePeel: acts('mishap.orangePeel', {
    now: ['mishap.tipBehind', 'mishap.thinnerCapful', 'mishap.newRoller'],
    after: ['mishap.sandAllThenCoat'],
    never: ['mishap.neverStretch'],
  }),
  lapMark: acts('mishap.lapMark', {
    now: ['mishap.toNearestCorner', 'mishap.leaveTacky'],
    after: ['mishap.blockSpots', 'mishap.wholePanel'],
    never: ['mishap.neverBrushEdge'],
  }),
  dust: acts('mishap.dust', {
    now: ['mishap.pickWet', 'mishap.shutDust', 'mishap.leaveTacky'],
    after: ['mishap.wetSandNibs'],
    never: ['mishap.neverBlow'],
  }),
  rollerBits: acts('mishap.rollerBits', {
    now: ['mishap.pickWet', 'mishap.newRoller', 'mishap.freshPaintOnly', 'mishap.leaveTacky'],
    after: ['mishap.blockSpots'],
    never: ['mishap.neverStretch'],
  }),
  rain: acts('mishap.rain', {
    now: ['mishap.stopRolling', 'mishap.coverClear', 'mishap.potLid', 'mishap.letDropsDry'],
    after: ['mishap.judgeDry', 'mishap.sandThenAgain', 'mishap.dryBeforeNext'],
    never: ['mishap.neverWipeDrops', 'mishap.neverTieStand', 'mishap.neverPlastic'],
  }),
  dew: acts('mishap.dew', {
    now: ['mishap.stopRolling', 'mishap.keepAirMoving', 'mishap.letDropsDry'],
    after: ['mishap.washBlush', 'mishap.polishOrSand', 'mishap.dryBeforeNext'],
    never: ['mishap.neverFlame', 'mishap.neverSolventBlush'],
  }),
  soft: acts('mishap.soft', {
    now: ['mishap.noCoatYet', 'mishap.whySoft', 'mishap.warmThrough', 'mishap.tryNail'],
    after: ['mishap.wrongMixOff', 'mishap.sandAllThenCoat', 'mishap.airThenAgain'],
    never: ['mishap.neverHardenerOnTop', 'mishap.neverPaintOver'],
  }),
  blisters: acts('mishap.blisters', {
    now: ['mishap.stopRolling', 'mishap.coolSide', 'mishap.leaveTacky'],
    after: ['mishap.openBlisters', 'mishap.sandThenAgain', 'mishap.thinAndLater'],
    never: ['mishap.neverPaintOver'],
  }),
  peeling: acts('mishap.peeling', {
    now: ['mishap.noCoatYet', 'mishap.tapeTest', 'mishap.photo'],
    after: ['mishap.backToSound', 'mishap.cleanAgain', 'mishap.primeBare'],
    never: ['mishap.neverFillEdge'],
  }),
  missedSpot: acts('mishap.missedSpot', {
    now: ['mishap.insideWetEdge', 'mishap.elseMark'],
    after: ['mishap.blockSpots', 'mishap.nextCoatCovers'],
    never: ['mishap.neverBrushEdge'],
  }),
  pinholes: acts('mishap.pinholes', {
    now: ['mishap.leaveTacky', 'mishap.markAll'],
    after: ['mishap.fillPinholes', 'mishap.fallingWarmth'],
    never: ['mishap.neverBridge'],
  }),
  lifting: acts('mishap.lifting', {
    now: ['mishap.stopRolling', 'mishap.leaveTacky', 'mishap.photo'],
    after: ['mishap.stripSound', 'mishap.rubTest', 'mishap.barrier'],
    never: ['mishap.neverPaintOver'],
  }),
  missedWindow: acts('mishap.missedWindow', {
    now: ['mishap.noCoatYet', 'mishap.readSheet'],
    after: ['mishap.keyAll', 'mishap.washBlush'],
    never: ['mishap.neverTrustTack'],
  }),
  tapeBleed: acts('mishap.tapeBleed', {
    now: ['mishap.wipeBleedWet', 'mishap.pullBack'],
    after: ['mishap.cutBack', 'mishap.touchIn'],
    never: ['mishap.neverSolventCured'],
  }),
  tapePulls: acts('mishap.tapePulls', {
    now: ['mishap.stopPulling', 'mishap.warmTape', 'mishap.scoreEdge'],
    after: ['mishap.feather', 'mishap.touchIn'],
    never: ['mishap.neverYank'],
  }),
}
