/** What the generic data sheets are called where one is chosen, by id; their figures stay with the catalogue. */
export const genericSheetNames: ReadonlyMap<string, string> = new Map([
  ['one-part-enamel', 'One-part enamel'],
  ['one-part-deck', 'One-part deck paint with grit'],
  ['textured-acrylic', 'Textured acrylic non-skid'],
  ['solvent-dewax', 'Dewaxing solvent'],
  ['two-part-finish', 'Two-part polyurethane gloss'],
  ['epoxy-primer', 'Epoxy primer'],
  ['epoxy-high-build', 'High-build epoxy primer'],
  ['epoxy-tie', 'Epoxy tie coat'],
  ['epoxy-barrier', 'Epoxy barrier coat'],
  ['epoxy-fairing', 'Epoxy fairing compound'],
  ['epoxy-resin', 'Epoxy laminating resin'],
  ['polyester-putty', 'Polyester putty'],
  ['vinylester-filler', 'Vinylester filler'],
  ['polyester-resin', 'Polyester laminating resin'],
  ['gelcoat', 'Gelcoat'],
])
