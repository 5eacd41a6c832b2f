/** Set when the pages are bundled: the version of the program. */
declare const __APP_VERSION__: string
