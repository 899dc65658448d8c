import { Slider } from '@mantine/core';
import { memo, useId } from 'react';
import type { RequestForm } from './request-form.js';
import styles from './request-part.module.css';

/** Wishes that are slid. */
type Slid = 'gradePercent' | 'bassPercent' | 'treblePercent' | 'bendPercent';

interface WishSliderProps {
  readonly field: Slid;
  readonly label: string;
  /** What the place of the slider means, in words. */
  readonly words: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly step?: number;
  readonly change: (change: Partial<RequestForm>) => void;
}

/** A wish by degrees, with its meaning in words beside it. While another is slid it is not drawn again. */
export const WishSlider = memo(function WishSlider(props: WishSliderProps) {
  const { field, label, words, value, least, most, step = 1, change } = props;
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
        onChange={(slid) => change({ [field]: slid })}
        thumbProps={{ 'aria-labelledby': id, 'aria-valuetext': words }}
      />
    </div>
  );
});

/** Where a wish that goes both ways wishes nothing. */
const MIDDLE = [{ value: 0 }];
