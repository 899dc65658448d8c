import { BigWord } from './big-word.js';
import { OtherReason } from './other-reason.js';
import { ScanBox } from './scan-box.js';

interface CountEntryProps {
  readonly words: {
    readonly box: string;
    readonly boxHint: string;
    readonly noSuchNumber: (text: string) => string;
    readonly other: string;
    readonly otherField: string;
  };
  /** What enters the reason that was typed. */
  readonly enter: string;
  readonly onScan: (text: string) => void;
  /** What was typed and is no number of a button. */
  readonly unheard: string | undefined;
  readonly asksOther: boolean;
  readonly onOther: (asks: boolean) => void;
  readonly onReason: (reason: string) => void;
}

/** The other ways to count beside the buttons: a number and Enter, and a reason that has no button. */
export function CountEntry(props: CountEntryProps) {
  const { words, enter, onScan, unheard, asksOther, onOther, onReason } = props;
  return (
    <>
      <ScanBox label={words.box} hint={words.boxHint} onScan={onScan} />
      {unheard !== undefined && <BigWord tone="stopped" word={unheard} more={words.noSuchNumber(unheard)} />}
      <OtherReason
        title={words.other}
        label={words.otherField}
        enter={enter}
        open={asksOther}
        onClose={() => onOther(false)}
        onReason={(reason) => {
          onOther(false);
          onReason(reason);
        }}
      />
    </>
  );
}
