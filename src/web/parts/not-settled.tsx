import { Link } from '@tanstack/react-router';
import { useMay } from '../api/session.js';
import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import { buttonClass } from './button.js';
import { Empty } from './empty.js';

/** Where nothing can be worked out because the shop has not said yet how it works: what that takes, and the way there. */
export function NotSettled() {
  const words = useWords(PARTS_WORDS);
  const may = useMay();
  return (
    <Empty what={words.notSettled}>
      {may('shop.edit') ? (
        <Link to="/shop/$part" params={{ part: 'rules' }} className={buttonClass('main')}>
          {words.toRules}
        </Link>
      ) : (
        <p>{words.notSettledYours}</p>
      )}
    </Empty>
  );
}
