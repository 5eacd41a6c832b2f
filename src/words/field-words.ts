/** By section and key: label and help. */
export type FieldWords = Readonly<
  Record<string, Readonly<Record<string, readonly [label: string, help: string]>>>
>
