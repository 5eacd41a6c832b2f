/** Ticks of one mark of the stick: five to a mark, the long one at its middle; a witness triangle where one is. */
const places = [6.4, 19.2, 32, 44.8, 57.6]

export const StickTicks = ({ here }: { readonly here: boolean }) => (
  <svg className="story-stick-ticks" width="24" height="64" viewBox="0 0 24 64" aria-hidden="true">
    {here ? (
      <path d="M0 19 16 32 0 45Z" fill="var(--onink)" />
    ) : (
      places.map((y) => (
        <path
          key={y}
          d={`M0 ${y}H${y === 32 ? 21 : 11}`}
          stroke="var(--ink)"
          strokeWidth={y === 32 ? 2 : 1}
        />
      ))
    )}
  </svg>
)

const across = [0, 1, 2, 3, 4, 5]

/** The same, lying: ticks hang from the upper edge, at every sixth of a mark so that both ends fall between two. */
export const PhoneTicks = ({ here }: { readonly here: boolean }) => (
  <svg className="phone-stick-ticks" width="100%" height="22" aria-hidden="true">
    {here ? (
      <svg x="50%" overflow="visible" aria-hidden="true">
        <path d="M-11 0H11L0 16Z" fill="var(--onink)" />
      </svg>
    ) : (
      across.map((k) => (
        <line
          key={k}
          x1={`${(k * 100) / 6}%`}
          x2={`${(k * 100) / 6}%`}
          y1="0"
          y2={k === 3 ? 20 : 8}
          stroke="var(--ink)"
          strokeWidth={k === 3 ? 2 : 1}
        />
      ))
    )}
  </svg>
)
