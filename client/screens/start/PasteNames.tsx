import { useId, useState } from 'react'
import { Choice } from '../../parts/Choice.tsx'
import { Select } from '../../parts/Select.tsx'
import { say } from '../../words/say-any.ts'
import { type HandicapKind, handicapKinds, type PlayerDraft } from './draft.ts'
import { kindPasted, parseNames } from './names-pasted.ts'

interface Props {
  readonly tees: readonly { readonly id: string; readonly name: string }[]
  readonly isWorking?: boolean
  /** False keeps what was pasted, to be put right. */
  readonly onAdd: (players: readonly Omit<PlayerDraft, 'id'>[]) => boolean
}

/** Many people at once, one a line with the figure behind the name. */
export function PasteNames({ tees, isWorking = false, onAdd }: Props) {
  const [text, setText] = useState('')
  const [chosen, setChosen] = useState<HandicapKind | null>(null)
  const [tee, setTee] = useState(tees[0]?.id ?? '')
  const id = useId()
  const names = parseNames(text)
  const kind = chosen ?? kindPasted(names)
  const add = (): void => {
    if (onAdd(names.map(each => ({ ...each, kind, tee })))) setText('')
  }
  return (
    <>
      <div className="field">
        <label htmlFor={id}>{say('paste-names')}</label>
        <textarea
          id={id}
          rows={6}
          autoComplete="off"
          value={text}
          placeholder={say('paste-example')}
          aria-describedby={`${id}-hint`}
          onChange={event => setText(event.target.value)}
        />
        <p id={`${id}-hint`} className="quiet">
          {say('paste-hint')}
        </p>
      </div>
      <Choice
        label={say('paste-kind')}
        value={kind}
        options={handicapKinds.map(each => ({ value: each, text: say(`start-kind-${each}`) }))}
        onValue={value => setChosen(handicapKinds.find(each => each === value) ?? null)}
      />
      {tees.length > 0 && (
        <Select
          label={say('paste-tee')}
          value={tee}
          options={[
            { value: '', text: say('start-choose-tee') },
            ...tees.map(each => ({ value: each.id, text: each.name })),
          ]}
          onValue={setTee}
        />
      )}
      <button type="button" className="button" disabled={isWorking || names.length === 0} onClick={add}>
        {addWords(names.length)}
      </button>
    </>
  )
}

const addWords = (n: number): string => (n > 1 ? say('add-n', { n }) : say(n === 1 ? 'add-1' : 'add-0'))
