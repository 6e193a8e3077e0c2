import { useEffect, useEffectEvent, useRef, useState } from 'react'
import { type Camera, watchCodes } from '../../device/code-reader.ts'
import { say } from '../../words/say-any.ts'

/** What the camera sees, telling each code that comes into it. */
export function CodeCamera({ onCode }: { readonly onCode: (code: string) => void }) {
  const video = useRef<HTMLVideoElement>(null)
  const [isMissing, setMissing] = useState(false)
  const told = useEffectEvent(onCode)
  useEffect(() => {
    let camera: Camera | null = null
    let isWanted = true
    const start = async (screen: HTMLVideoElement): Promise<void> => {
      const started = await watchCodes(screen, told)
      camera = started
      if (!isWanted) started?.stop()
      else setMissing(started === null)
    }
    if (video.current) void start(video.current)
    return () => {
      isWanted = false
      camera?.stop()
    }
  }, [])
  if (isMissing) return <p role="alert">{say('take-over-no-camera')}</p>
  return (
    // A picture without sound has nothing to caption.
    <video ref={video} className="camera" aria-label={say('take-over-view')} muted playsInline />
  )
}
