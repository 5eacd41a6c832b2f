/** One line over the sheet for what holds everywhere: no signal, a newer version, read only. */
import type { ReactNode } from 'react'
import './banner.css'
import { classes } from './classes.ts'

export type BannerProps = {
  readonly children: ReactNode
  readonly action?: ReactNode
  /** Something is not kept or not right; read out at once. */
  readonly fault?: boolean | undefined
}

export const Banner = ({ children, action, fault = false }: BannerProps) => (
  <div className={classes('banner', 'off-paper', fault && 'banner-fault')} role={fault ? 'alert' : 'status'}>
    <p className="banner-text">{children}</p>
    {action}
  </div>
)
