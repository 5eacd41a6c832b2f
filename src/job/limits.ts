/** How much a document may hold. Far above any real job; a hostile file is refused before it costs anything. */
export const limits = {
  bytes: 8 * 1024 * 1024,
  /** Maps inside maps; a document needs four. */
  depth: 12,
  /** Pieces the YAML reader may see; a YAML job document of 2,000 lines has about 20,000. */
  yamlPieces: 200_000,
  aliases: 100,
  /** Cells of the whole document, aliases counted each time. */
  cells: 1_000_000,
  itemsPerSection: 5_000,
  logEntries: 100_000,
  /** Characters of one cell. */
  text: 4_000,
} as const
