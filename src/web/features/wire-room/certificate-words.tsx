import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { WIRE_WORDS } from '../../words/wire.js';
import { diameterCheck, tensileCheck } from './certificate-checks.js';
import type { WireRecord } from './wire-book.js';

interface CertificateWordsProps {
  readonly wire: WireRecord;
  readonly diameterM: number | undefined;
  readonly tensilePa: number | undefined;
}

/** What a certificate's figures mean against the wire's size and standard. */
export function CertificateWords({ wire, diameterM, tensilePa }: CertificateWordsProps) {
  const words = useWords(WIRE_WORDS);
  const figures = useFigures();
  const diameter = diameterM === undefined ? undefined : diameterCheck(wire, diameterM);
  const tensile = tensilePa === undefined ? undefined : tensileCheck(wire, tensilePa);
  return (
    <div role="status">
      {diameter && (
        <p className={diameter.holds ? undefined : 'care'}>
          {(diameter.holds ? words.diameterHolds : words.diameterOff)(
            figures.diameter(diameter.offM),
            figures.diameter(diameter.toleranceM),
            diameter.standard,
          )}
        </p>
      )}
      {tensile && (
        <p className={tensile.holds ? undefined : 'care'}>
          {(tensile.holds ? words.tensileHolds : words.tensileLow)(
            figures.stress(tensile.minimumPa),
            tensile.standard,
          )}
        </p>
      )}
    </div>
  );
}
