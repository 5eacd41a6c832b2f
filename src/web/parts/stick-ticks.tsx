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
