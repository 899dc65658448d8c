import { useWords } from '../words/language.js';
import { PARTS_WORDS } from '../words/parts.js';
import type { FieldApart } from './fields-apart.js';
import { Sideways } from './sideways.js';
import styles from './versions-apart.module.css';

interface VersionsApartProps {
  readonly caption: string;
  /** What stands to the left and to the right. */
  readonly headings: readonly [string, string];
  readonly fields: readonly FieldApart[];
}

/** Two versions of a record side by side, field by field; where they differ is said in a word and a sign. */
export function VersionsApart({ caption, headings, fields }: VersionsApartProps) {
  const words = useWords(PARTS_WORDS);
  return (
    <Sideways label={caption}>
      <table className={styles.apart}>
        <caption className="unseen">{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{words.field}</th>
            <th scope="col">{headings[0]}</th>
            <th scope="col">{headings[1]}</th>
            <th scope="col">
              <span className="unseen">{words.whetherDiffers}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {fields.map(({ name, here, there, differs }) => (
            <tr key={name} className={differs ? styles.differs : undefined}>
              <th scope="row">{name}</th>
              <td>{here}</td>
              <td>{there}</td>
              <td className={styles.sign}>{differs && words.differs}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Sideways>
  );
}
