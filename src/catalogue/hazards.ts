/** Hazards that materials and work bring, each with what is usually worn and done. The product’s own sheet rules. */
import { type Hazard, hazard } from './hazard-type.ts'

const chemicals: readonly Hazard[] = [
  hazard('isocyanate', {
    severity: 'warning',
    stands: 'step',
    families: ['two-part polyurethane'],
    flags: ['isocyanate'],
    protection: ['gloves', 'sleeves', 'goggles', 'vapourMask', 'draught'],
    source: 'US public health studies of isocyanates in painting; NIOSH Pocket Guide',
  }),
  hazard('sensitisedPerson', {
    severity: 'danger',
    stands: 'job',
    flags: ['sensitised person'],
    source: 'US public health studies of isocyanates in painting',
  }),
  hazard('isocyanateTraining', {
    severity: 'notice',
    stands: 'job',
    flags: ['untrained person'],
    data: { contentShare: 0.001, renewYears: 5 },
    source: 'Commission Regulation (EU) 2020/1149',
  }),
  hazard('styrene', {
    severity: 'warning',
    stands: 'step',
    families: ['polyester', 'vinylester', 'gelcoat'],
    protection: ['gloves', 'glasses', 'vapourMask', 'draught', 'noSpark'],
    source: 'NIOSH Pocket Guide, styrene',
  }),
  hazard('peroxide', {
    severity: 'warning',
    stands: 'step',
    families: ['polyester', 'vinylester', 'gelcoat'],
    flags: ['catalyst'],
    protection: ['goggles', 'gloves', 'eyeWash'],
    source: 'NIOSH, methyl ethyl ketone peroxide',
  }),
  hazard('peroxideMix', {
    severity: 'danger',
    stands: 'step',
    families: ['polyester', 'vinylester', 'gelcoat'],
    flags: ['catalyst'],
    protection: ['goggles', 'gloves'],
    source: 'NIOSH, methyl ethyl ketone peroxide; Practical Action, Basic Fibreglass Boat Building',
  }),
  hazard('leftovers', {
    severity: 'warning',
    stands: 'step',
    families: ['polyester', 'vinylester', 'gelcoat', 'epoxy'],
    flags: ['catalysed leftovers'],
    protection: ['gloves'],
    source: 'assumed',
  }),
  hazard('epoxy', {
    severity: 'warning',
    stands: 'step',
    families: ['epoxy'],
    protection: ['gloves', 'sleeves', 'glasses', 'draught'],
    source: 'assumed',
  }),
  hazard('solventVapour', {
    severity: 'warning',
    stands: 'step',
    families: ['solvent', 'one-part', 'two-part polyurethane'],
    flags: ['solvent'],
    protection: ['gloves', 'glasses', 'vapourMask', 'draught', 'noSpark'],
    source: 'NIOSH Pocket Guide, limits of paint solvents',
  }),
  hazard('flashPoint', {
    severity: 'danger',
    stands: 'step',
    flags: ['air near flash point'],
    protection: ['noSpark', 'draught', 'extinguisher'],
    data: { marginK: 5 },
    source: 'public data sheets, flash points of 25 to 39 °C; margin assumed',
  }),
  hazard('closedSpace', {
    severity: 'warning',
    stands: 'step',
    flags: ['closed space'],
    protection: ['draught', 'noSpark', 'vapourMask'],
    source: 'US shipyard rule, 29 CFR 1915.13; vapour in bilges assumed',
  }),
  hazard('eyeSplash', {
    severity: 'warning',
    stands: 'step',
    flags: ['mixing'],
    protection: ['glasses', 'gloves', 'eyeWash'],
    source: 'amateurs’ refit log',
  }),
]

const dusts: readonly Hazard[] = [
  hazard('dust', {
    severity: 'caution',
    stands: 'step',
    flags: ['sanding'],
    protection: ['dustMask', 'glasses', 'vacuumTool'],
    source: 'US agency guidance for boatyards',
  }),
  hazard('laminateDust', {
    severity: 'warning',
    stands: 'step',
    flags: ['laminate dust'],
    protection: ['dustMask', 'goggles', 'sleeves', 'gloves', 'vacuumTool'],
    source: 'NIOSH, fibrous glass dust; US agency guidance for boatyards',
  }),
  hazard('dryPowder', {
    severity: 'caution',
    stands: 'step',
    flags: ['dry powder'],
    protection: ['dustMask', 'glasses'],
    source: 'assumed',
  }),
  hazard('lead', {
    severity: 'warning',
    stands: 'step',
    flags: ['old paint'],
    protection: ['dustMask', 'gloves', 'sleeves', 'vacuumTool'],
    source: 'US agency guidance on lead in marine paint',
  }),
  hazard('antifouling', {
    severity: 'warning',
    stands: 'step',
    flags: ['antifouling'],
    protection: ['dustMask', 'gloves', 'sleeves', 'goggles'],
    source: 'paint makers’ application guides; newspaper report on organotin',
  }),
]

const bodies: readonly Hazard[] = [
  hazard('powerTool', {
    severity: 'caution',
    stands: 'step',
    flags: ['power tool'],
    protection: ['hearing', 'glasses', 'gloves'],
    source: 'assumed',
  }),
  hazard('staging', {
    severity: 'warning',
    stands: 'step',
    flags: ['staging'],
    protection: ['staging'],
    data: { heightM: 1.8 },
    source: 'assumed, from amateurs’ refit logs',
  }),
  hazard('heat', {
    severity: 'caution',
    stands: 'step',
    flags: ['heat'],
    protection: ['water'],
    data: { airC: 30 },
    source: 'assumed, from an amateurs’ refit log, 46 °C in a shed',
  }),
]

const wastes: readonly Hazard[] = [
  hazard('wipes', {
    severity: 'caution',
    stands: 'step',
    flags: ['wipes'],
    protection: ['closedBin', 'gloves'],
    data: { mostDays: 180 },
    source: 'US rule on solvent-contaminated wipes, 40 CFR 261.4',
  }),
  hazard('oilyRags', {
    severity: 'warning',
    stands: 'step',
    families: ['one-part'],
    flags: ['oily rags'],
    protection: ['closedBin'],
    source: 'assumed',
  }),
  hazard('waste', {
    severity: 'notice',
    stands: 'job',
    flags: ['waste to drain'],
    source: 'US agency guidance for boatyards',
  }),
  hazard('drips', {
    severity: 'notice',
    stands: 'step',
    flags: ['coating in the open'],
    data: { distanceM: 10 },
    source: 'amateurs’ refit log',
  }),
]

export const hazards: readonly Hazard[] = [...chemicals, ...dusts, ...bodies, ...wastes]
