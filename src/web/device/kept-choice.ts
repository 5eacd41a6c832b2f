/** A way of looking at something that this device remembers: never sent anywhere, and no part of a job. */
import { useState } from 'react'

const placeOf = (name: string): string => `hardstand.${name}`

/** The first choice where nothing was kept, or nothing can be. */
export function useKeptChoice<Value extends string>(
  name: string,
  choices: readonly [Value, ...Value[]],
): readonly [Value, (value: Value) => void] {
  const [chosen, setChosen] = useState(() => read(name, choices))
  const choose = (value: Value): void => {
    setChosen(value)
    try {
      localStorage.setItem(placeOf(name), value)
    } catch {
      // A browser that keeps nothing still shows what was chosen.
    }
  }
  return [chosen, choose]
}

function read<Value extends string>(name: string, choices: readonly [Value, ...Value[]]): Value {
  try {
    const kept = localStorage.getItem(placeOf(name))
    return choices.find((choice) => choice === kept) ?? choices[0]
  } catch {
    return choices[0]
  }
}
