import { useWords } from '../../words/language.js';
import { PARTS_WORDS } from '../../words/parts.js';
import styles from './section.module.css';
import type { SectionLayer, StringSection } from './section-of.js';
import { sectionInWords } from './section-words.js';

interface SectionAlongProps {
  readonly section: StringSection;
  readonly scale: number;
  readonly width: number;
}

/** A string cut along its axis, to scale: turns above the core and, half a pitch on, below it. */
export function SectionAlong({ section, scale, width }: SectionAlongProps) {
  const words = useWords(PARTS_WORDS);
  const height = section.outsideM * scale + 3;
  const coreHeight = (section.layers[0]?.insideM ?? section.core.sizeM) * scale;
  return (
    <svg
      width={width}
      height={height}
      viewBox={`0 ${-height / 2} ${width} ${height}`}
      role="img"
      aria-label={words.cutAlong(sectionInWords(section))}
      className={styles.section}
    >
      <rect
        x={-2}
        y={-coreHeight / 2}
        width={width + 4}
        height={coreHeight}
        className={section.layers.length === 0 ? styles.wrap : styles.core}
      />
      {section.layers.map((layer, at) => (
        <Turns
          key={layer.outsideM}
          layer={layer}
          scale={scale}
          width={width}
          style={at === section.layers.length - 1 && at > 0 ? styles.outer : styles.wrap}
        />
      ))}
    </svg>
  );
}

interface TurnsProps {
  readonly layer: SectionLayer;
  readonly scale: number;
  readonly width: number;
  readonly style: string | undefined;
}

function Turns({ layer, scale, width, style }: TurnsProps) {
  const pitch = layer.pitchM * scale;
  const places = Array.from({ length: Math.ceil(width / pitch) + 2 }, (_, turn) => turn * pitch);
  return places.map((x) => (
    <g key={x}>
      <Turn layer={layer} scale={scale} x={x} side={-1} style={style} />
      <Turn layer={layer} scale={scale} x={x - pitch / 2} side={1} style={style} />
    </g>
  ));
}

interface TurnProps extends Omit<TurnsProps, 'width'> {
  readonly x: number;
  readonly side: 1 | -1;
}

const Turn = ({ layer, scale, x, side, style }: TurnProps) => (
  <ellipse
    cx={x}
    cy={side * layer.centreM * scale}
    rx={(layer.widthM * scale) / 2}
    ry={(layer.heightM * scale) / 2}
    className={style}
  />
);
