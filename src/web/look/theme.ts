import {
  Checkbox,
  createTheme,
  NativeSelect,
  Pagination,
  PasswordInput,
  SegmentedControl,
  Slider,
  TextInput,
} from '@mantine/core';

/** How the library's components stand on our pages. Colours, faces and sizes are roles of `tokens.css`. */
export const THEME = createTheme({
  respectReducedMotion: true,
  cursorType: 'pointer',
  components: {
    TextInput: TextInput.extend({ defaultProps: { size: 'md' } }),
    PasswordInput: PasswordInput.extend({ defaultProps: { size: 'md' } }),
    Checkbox: Checkbox.extend({ defaultProps: { size: 'md' } }),
    NativeSelect: NativeSelect.extend({ defaultProps: { size: 'md' } }),
    SegmentedControl: SegmentedControl.extend({ defaultProps: { size: 'sm', withItemsBorders: false } }),
    Slider: Slider.extend({ defaultProps: { size: 'sm', label: null } }),
    Pagination: Pagination.extend({ defaultProps: { size: 'md' } }),
  },
});
