/** From this share of its zone on a layer covers; below it fills spots. */
export const COVERS_FROM = 0.5
