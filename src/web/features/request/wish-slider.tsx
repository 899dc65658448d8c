import { Slider } from '@mantine/core';
import { useId } from 'react';
import styles from './request-part.module.css';

interface WishSliderProps {
  readonly label: string;
  /** What the place of the slider means, in words. */
  readonly words: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly onChange: (value: number) => void;
}

/** A wish by degrees, with its meaning in words beside it. */
export function WishSlider({ label, words, value, least, most, step, onChange }: WishSliderProps) {
  const id = useId();
  return (
    <div className={styles.slider}>
      <div className={styles.sliderHead}>
        <span id={id}>{label}</span>
        <output className="quiet">{words}</output>
      </div>
      <Slider
        {...(least < 0 ? { className: styles.twoSided, marks: MIDDLE } : {})}
        min={least}
        max={most}
        step={step}
        value={value}
        onChange={onChange}
        thumbProps={{ 'aria-labelledby': id, 'aria-valuetext': words }}
      />
    </div>
  );
}

/** Where a wish that goes both ways wishes nothing. */
const MIDDLE = [{ value: 0 }];
