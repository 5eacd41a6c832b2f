/** What a sheet says of itself: empty, busy, offline, asking. */
import { useState } from 'react'
import { Banner, Button, Dialog, Ghost, KeptMark, Part, PartRow, Progress } from '../../parts/index.ts'

export const States = () => (
  <PartRow>
    <Part title="Empty">
      <Ghost kind="hull" action={<Button>Give the sizes of the boat</Button>}>
        The boat is drawn here as soon as length, beam and freeboard are known.
      </Ghost>
    </Part>
    <Part title="Busy and kept">
      <div className="parts-page-stack">
        <Progress label="Finding days" share={0.43} found="So far launch on Friday 29 May" />
        <Progress label="Reading the scan" />
        <KeptMark where="writing" />
        <KeptMark where="device" detail="3 changes wait for the server" />
        <KeptMark where="both" />
        <KeptMark where="fault" detail="This device has no room left" />
      </div>
    </Part>
    <Part title="Said over the sheet">
      <Banner>No signal: everything is kept on this device.</Banner>
      <Banner action={<Button>Load it now</Button>}>A newer version is ready.</Banner>
      <Banner fault>The last change could not be kept.</Banner>
      <Asking />
    </Part>
  </PartRow>
)

const Asking = () => {
  const [asking, setAsking] = useState(false)
  const close = () => setAsking(false)
  return (
    <>
      <Button onClick={() => setAsking(true)}>Take away a zone</Button>
      {asking ? (
        <Dialog
          title="Take away Topsides, port?"
          onClose={close}
          actions={
            <>
              <Button onClick={close}>Keep it</Button>
              <Button next onClick={close}>
                Take it away
              </Button>
            </>
          }
        >
          <p>Its build-up and 14 steps go with it. Undo brings them back.</p>
        </Dialog>
      ) : null}
    </>
  )
}
