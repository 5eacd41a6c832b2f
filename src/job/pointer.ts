/** JSON pointers. SOURCE: P. Bryan, K. Zyp, M. Nottingham, JavaScript Object Notation (JSON) Pointer, RFC 6901, 2013. */

const escaped = (key: string): string => key.replaceAll('~', '~0').replaceAll('/', '~1')

/** The pointer of a key below another pointer. */
export const below = (pointer: string, key: string): string => `${pointer}/${escaped(key)}`

/** The keys of a pointer, outermost first. */
export const keysOf = (pointer: string): readonly string[] =>
  pointer
    .split('/')
    .slice(1)
    .map((key) => key.replaceAll('~1', '/').replaceAll('~0', '~'))
