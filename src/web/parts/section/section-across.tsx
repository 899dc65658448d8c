import styles from './section.module.css';
import { hexagonCorners, type StringSection } from './section-of.js';
import { sectionInWords } from './section-words.js';

interface SectionAcrossProps {
  readonly section: StringSection;
  /** Pixels a metre: strings that stand together share it. */
  readonly scale: number;
}

/** A string cut across, to scale: each layer a ring, the core on top. */
export function SectionAcross({ section, scale }: SectionAcrossProps) {
  const size = section.outsideM * scale + 3;
  return (
    <svg
      width={size}
      height={size}
      viewBox={`${-size / 2} ${-size / 2} ${size} ${size}`}
      role="img"
      aria-label={sectionInWords(section)}
      className={styles.section}
    >
      {section.layers.toReversed().map((layer, at) => (
        <circle
          key={layer.outsideM}
          r={(layer.outsideM * scale) / 2}
          className={at === 0 && section.layers.length > 1 ? styles.outer : styles.wrap}
        />
      ))}
      <CoreAcross section={section} scale={scale} />
    </svg>
  );
}

function CoreAcross({ section: { core, layers }, scale }: SectionAcrossProps) {
  const style = layers.length === 0 ? styles.wrap : styles.core;
  if (core.shape === 'round') return <circle r={(core.sizeM * scale) / 2} className={style} />;
  const points = hexagonCorners(core.sizeM).map(([x, y]) => `${x * scale},${y * scale}`);
  return <polygon points={points.join(' ')} className={style} />;
}
