/** Shortcuts between layers that fail: what is done, what comes of it, and what helps. */
export const shortcutLabels: Readonly<Record<string, string>> = {
  'shortcutName.twoPartOverOnePart': 'Two-part over old one-part',
  'shortcutName.polyesterOverEpoxy': 'Polyester over epoxy',
  'shortcutName.missedWindow': 'Too late, and not sanded',
  'shortcutName.solventOnLaminate': 'Solvent on ground laminate',
  'shortcutName.noDewax': 'Sanded before it is dewaxed',
  'shortcutName.finishOverPutty': 'Finish straight on putty',
  'shortcutName.unwashedEpoxy': 'Epoxy not washed',
  'shortcutDrawing.lifts': 'the upper film lifts in waves',
  'shortcutDrawing.peels': 'the upper film curls off',
  'shortcutDrawing.stays wet': 'the upper layer stays wet where it meets the lower',
  'shortcutDrawing.craters': 'the wet film draws back in craters',
  'shortcutDrawing.softens': 'the surface goes soft',
  'shortcutDrawing.shows through': 'the edge of the filler shows through the film',
  'buildUp.shortcuts': 'Shortcuts that fail',
  'buildUp.scale': 'How the films are drawn',
  'buildUp.readable': 'Readable',
  'buildUp.trueScale': 'True scale',
  'paperSection.trueScale': 'New films to one scale; below cut short',
}

export const shortcutWords: Readonly<Record<string, string>> = {
  'shortcut.twoPartOverOnePart':
    'Its strong solvent lifts the soft film below. Strip the old paint, or rub it with solvent first and seal what holds with an epoxy barrier on a test patch.',
  'shortcut.polyesterOverEpoxy':
    'What is left of the hardener stops the polyester from curing where they meet. Fill over epoxy with epoxy; gelcoat only for looks, days later, washed with water and sanded.',
  'shortcut.missedWindow':
    'Past the longest wait to recoat, fresh film no longer bonds to the one below and comes off in sheets. Sand it first; the sheet says until when.',
  'shortcut.solventOnLaminate':
    'Solvent softens freshly ground polyester, and nothing holds on that. Dewax before grinding; afterwards only dust off.',
  'shortcut.noDewax':
    'Sanding drives wax and silicone into the surface, and the wet film draws back from them. Wash and dewax with two cloths before the first paper.',
  'shortcut.finishOverPutty':
    'Strong solvent swells the edge of the putty, and it shows in the gloss within weeks. Let it cure, sand it, and put an epoxy primer between.',
  'shortcut.unwashedEpoxy':
    'Cool damp air leaves a waxy film on epoxy that solvent and paper only spread. Wash it off with water and a pad, then sand, before anything goes on.',
  'shortcut.source': 'By: {source}',
}
