/** Layers that fill hollows or build up laminate: put on with knife or roller, and no coat of paint. */
const fillers: ReadonlySet<string> = new Set(['filler', 'fairing', 'laminating resin'])

export const fills = (role: string): boolean => fillers.has(role)
