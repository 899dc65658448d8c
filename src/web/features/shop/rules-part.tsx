import { useAllRecords } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';
import { RecordEditor } from './form/record-editor.js';
import { NEW_SETTINGS, specsOfSettings } from './specs-of-others.js';

/** What the shop has settled for itself. There is one such record. */
export function RulesPart() {
  const words = useWords(SHOP_WORDS);
  const settings = useAllRecords('settings');
  return (
    <Asked question={settings} what={words.parts.rules}>
      {([settled]) => (
        <>
          {!settled && <p>{words.rules.notSettled}</p>}
          <RecordEditor
            kind="settings"
            record={settled}
            blank={settled?.body ?? NEW_SETTINGS}
            specs={specsOfSettings(words)}
          />
        </>
      )}
    </Asked>
  );
}
