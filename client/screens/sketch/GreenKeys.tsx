import { greenSketchFacts } from '#core/outing/acts-sketch.ts'
import type { HoleSketch } from '#core/outing/sketch.ts'
import { wholeIn } from '#core/plan/advice/in-unit.ts'
import { pinOn } from '#core/plan/aim/sketch.ts'
import { sketchInYards } from '#core/plan/aim/sketch-of-course.ts'
import { fire } from '../../parts/fire.ts'
import { act } from '../../state/actions.ts'
import { say } from '../../words/say-any.ts'
import { rightText } from '../../words/sketch-text.ts'
import { ExactFigures } from './ExactFigures.tsx'
import { amountsWith, greenDepths, greenDrawn, greenRights, greenWidths, type HoleDrawn } from './sketch-view.ts'
import { TapKeys } from './TapKeys.tsx'

interface Props {
  readonly hole: number
  readonly sketch: HoleSketch
  readonly drawn: HoleDrawn
}

/** How wide and how deep the green is; the one that nobody has said stands at its usual size once the other is said. */
export function GreenKeys({ hole, sketch, drawn }: Props) {
  const green = greenDrawn(sketch, drawn)
  const said = sketch.green === null ? null : green
  const put = (changed: { readonly width?: number; readonly depth?: number; readonly right?: number }): void =>
    fire(act('green drawn', greenSketchFacts(hole, { ...green, ...changed })))
  const unit = say(`unit-${drawn.unit}`)
  const widthLabel = say('number-in-unit', { number: say('sketch-width'), unit })
  const depthLabel = say('number-in-unit', { number: say('sketch-depth'), unit })
  return (
    <section className="section" aria-label={say('sketch-green')}>
      <h2>{say('sketch-green')}</h2>
      <TapKeys
        label={widthLabel}
        value={said?.width ?? null}
        values={amountsWith(greenWidths, said?.width ?? null)}
        onValue={width => put({ width })}
      />
      <TapKeys
        label={depthLabel}
        value={said?.depth ?? null}
        values={amountsWith(greenDepths, said?.depth ?? null)}
        onValue={depth => put({ depth })}
      />
      <TapKeys
        label={say('sketch-right')}
        value={said?.right ?? null}
        values={amountsWith(greenRights, said?.right ?? null)}
        textOf={rightText}
        onValue={right => put({ right })}
      />
      <p className="quiet">
        {said === null
          ? say('sketch-usual-green', { width: green.width, depth: green.depth })
          : say('sketch-pins', { n: pinFromMiddle(sketch, drawn) })}
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

/** How far a front or a back pin is from the middle, in the unit of the hole. */
const pinFromMiddle = (sketch: HoleSketch, drawn: HoleDrawn): number =>
  wholeIn(pinOn(sketchInYards(sketch, drawn).green, 'back', 'middle').beyondYd, drawn.unit)
