import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { useTell } from '../../parts/notices.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';

/** A secret that is shown this once: as text, to be read from the screen, and to be copied. */
export function ShownOnce({ secret, lead }: { readonly secret: string; readonly lead: string }) {
  const words = useWords(SHOP_WORDS);
  const tell = useTell();
  return (
    <div className={desk.stack}>
      <p>{lead}</p>
      <code className={desk.secret}>{secret}</code>
      <div>
        <Button
          kind="main"
          onClick={() =>
            void navigator.clipboard.writeText(secret).then(() => tell({ text: words.people.copied }))
          }
        >
          {words.people.copy}
        </Button>
      </div>
    </div>
  );
}
