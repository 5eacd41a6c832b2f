/** The press and setters for tests of papers: fonts are opened once for all of them. */
import { nodePress, type Press } from '#papers'

const opened = nodePress()

export const testPress = (): Promise<Press> => opened
