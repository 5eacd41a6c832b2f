/** File names from ids: small letters, digits and hyphens, short, and never the same twice. */
export function fileNames(ids: readonly string[]): readonly string[] {
  const used = new Set<string>()
  return ids.map((id) => {
    const plain = plainName(id)
    const name = [plain, ...Array.from({ length: ids.length }, (_, index) => `${plain}-${index + 2}`)].find(
      (each) => !used.has(each),
    )!
    used.add(name)
    return name
  })
}

const plainName = (id: string): string => {
  const plain = id
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
    .replace(/-+$/, '')
  return plain === '' ? 'change' : plain
}
