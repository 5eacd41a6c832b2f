/** Buttons and links that look like one: ink outline and lettering, named by what happens. One `next` a sheet. */
import type { AnchorHTMLAttributes, ButtonHTMLAttributes, ReactNode } from 'react'
import './button.css'
import { classes } from './classes.ts'

type Look = {
  /** The next thing to do: filled with ink. */
  readonly next?: boolean | undefined
  /** 64 px high, for gloves. */
  readonly big?: boolean | undefined
  /** A drawing beside the words, never instead of them. */
  readonly icon?: ReactNode
}

export type ButtonProps = Look & ButtonHTMLAttributes<HTMLButtonElement>

export const Button = ({ next, big, icon, className, children, type = 'button', ...rest }: ButtonProps) => (
  <button type={type} className={lookOf({ next, big }, className)} {...rest}>
    {icon}
    {children}
  </button>
)

export type LinkButtonProps = Look & AnchorHTMLAttributes<HTMLAnchorElement> & { readonly href: string }

export const LinkButton = ({ next, big, icon, className, children, ...rest }: LinkButtonProps) => (
  <a className={lookOf({ next, big }, className)} {...rest}>
    {icon}
    {children}
  </a>
)

const lookOf = ({ next, big }: Look, more?: string): string =>
  classes('button', 'off-paper', next && 'button-next', big && 'button-big', more)
