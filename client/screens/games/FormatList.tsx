import type { FormatName } from '#core/formats/format-names.ts'
import { Tick } from '../../parts/Tick.tsx'
import { say } from '../../words/say-any.ts'
import { formatsFitting } from './families.ts'
import type { Named } from './sides.ts'

interface Props {
  readonly balls: readonly Named[]
  readonly ballPlayers: number
  readonly isOn: (format: FormatName) => boolean
  /** Formats that are not offered. */
  readonly isLeftOut?: (format: FormatName) => boolean
  readonly onTick: (format: FormatName, isOn: boolean) => void
}

/** The formats that these balls can play, family by family, each behind one tap. */
export function FormatList({ balls, ballPlayers, isOn, isLeftOut = () => false, onTick }: Props) {
  const fitting = formatsFitting(balls, ballPlayers, isOn, isLeftOut)
  if (fitting.length === 0) return <p>{say('games-too-few')}</p>
  return (
    <div>
      {fitting.map(({ family, formats }) => (
        <details key={family} className="family">
          <summary>
            {say(formats.length === 1 ? 'family-one' : 'family-n', {
              family: say(`family-${family}`),
              n: formats.length,
            })}
          </summary>
          {formats.map(format => (
            <Tick key={format} label={say(format)} isOn={isOn(format)} onChange={on => onTick(format, on)} />
          ))}
        </details>
      ))}
    </div>
  )
}
