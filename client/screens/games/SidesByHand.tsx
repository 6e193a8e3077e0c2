import { Select } from '../../parts/Select.tsx'
import { say } from '../../words/say-any.ts'
import type { GameFieldsProps } from './GameFields.tsx'
import { sidesInHand } from './game-acts.ts'
import { mostSides, type Sides } from './sides.ts'

/** Of a field too large to list its ways: which side each ball is on, ball by ball. */
export function SidesByHand({ format, game, balls, onChange, faultAt }: GameFieldsProps) {
  const sides = sidesInHand(format, game, balls)
  const most = mostSides(format, balls.length)
  const options = [
    { value: '', text: say('game-side-none') },
    ...Array.from({ length: most }, (_, place) => ({
      value: String(place),
      text: say('game-side-n', { n: place + 1 }),
    })),
  ]
  const fault = faultAt(format)
  return (
    <details open={fault !== undefined || undefined}>
      <summary>{say('game-sides', { game: say(format) })}</summary>
      <div className="group-box">
        {fault && <p className="fault">{fault}</p>}
        {balls.map(({ id, name }) => (
          <Select
            key={id}
            label={name}
            value={placeOf(sides, id)}
            options={options}
            onValue={value => onChange({ sidesChosen: moved(sides, id, value, most) })}
          />
        ))}
      </div>
    </details>
  )
}

function placeOf(sides: Sides, id: string): string {
  const place = sides.findIndex(side => side.includes(id))
  return place === -1 ? '' : String(place)
}

/** A side left empty keeps its number until the game is put in. */
const moved = (sides: Sides, id: string, to: string, most: number): Sides =>
  Array.from({ length: most }, (_, place) => {
    const others = (sides[place] ?? []).filter(each => each !== id)
    return to === String(place) ? [...others, id] : others
  })
