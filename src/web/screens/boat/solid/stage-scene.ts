/** What a stage is given to draw. */
import type { Solid } from '#plan'
import type { Inks, LineLook, Picture } from './picture.ts'
import type { Camera } from './view.ts'

export type StageScene = {
  readonly solid: Solid
  readonly picture: Picture
  /** As the eye sees it now. */
  readonly outline: LineLook
  readonly camera: Camera
  readonly inks: Inks
}
