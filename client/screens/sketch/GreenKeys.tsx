import { greenSketchFacts } from '#core/outing/acts-sketch.ts'
import type { HoleSketch } from '#core/outing/sketch.ts'
import { pinFromMiddle } from '#core/outing/sketch-area.ts'
import { fire } from '../../parts/fire.ts'
import { act } from '../../state/actions.ts'
import { say } from '../../words/say-any.ts'
import { AmountKeys } from './AmountKeys.tsx'
import { ExactFigures } from './ExactFigures.tsx'
import { amountsWith, greenDepths, greenDrawn, greenWidths, type HoleDrawn } from './sketch-view.ts'

interface Props {
  readonly hole: number
  readonly sketch: HoleSketch
  readonly drawn: HoleDrawn
}

/** How wide and how deep the green is; the one that nobody has said stands at its usual size once the other is said. */
export function GreenKeys({ hole, sketch, drawn }: Props) {
  const green = greenDrawn(sketch, drawn)
  const said = sketch.green === null ? null : green
  const put = (changed: { readonly width?: number; readonly depth?: number }): void =>
    fire(act('green drawn', greenSketchFacts(hole, { ...green, ...changed })))
  const unit = say(`unit-${drawn.unit}`)
  const widthLabel = say('number-in-unit', { number: say('sketch-width'), unit })
  const depthLabel = say('number-in-unit', { number: say('sketch-depth'), unit })
  return (
    <section className="section" aria-label={say('sketch-green')}>
      <h2>{say('sketch-green')}</h2>
      <AmountKeys
        label={widthLabel}
        value={said?.width ?? null}
        amounts={amountsWith(greenWidths, said?.width ?? null)}
        onAmount={width => put({ width })}
      />
      <AmountKeys
        label={depthLabel}
        value={said?.depth ?? null}
        amounts={amountsWith(greenDepths, said?.depth ?? null)}
        onAmount={depth => put({ depth })}
      />
      <p className="quiet">
        {said === null
          ? say('sketch-usual-green', { width: green.width, depth: green.depth })
          : say('sketch-pins', { n: pinFromMiddle(said) })}
      </p>
      <ExactFigures
        figures={[
          { name: 'width', label: widthLabel, value: said?.width ?? null, from: 3, to: 99 },
          { name: 'depth', label: depthLabel, value: said?.depth ?? null, from: 3, to: 99 },
        ]}
        onFigure={(name, amount) => put({ [name]: amount })}
      />
    </section>
  )
}
