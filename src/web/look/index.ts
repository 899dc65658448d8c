// The order is that of the cascade: the library's, our tokens, the library's roles from our tokens, our page.
import '@mantine/core/styles/baseline.css';
import '@mantine/core/styles/default-css-variables.css';
import '@mantine/core/styles/global.css';
import '@mantine/core/styles/UnstyledButton.css';
import '@mantine/core/styles/Group.css';
import '@mantine/core/styles/Input.css';
import '@mantine/core/styles/InlineInput.css';
import '@mantine/core/styles/ActionIcon.css';
import '@mantine/core/styles/CloseButton.css';
import '@mantine/core/styles/PasswordInput.css';
import '@mantine/core/styles/Checkbox.css';
import '@mantine/core/styles/FloatingIndicator.css';
import '@mantine/core/styles/SegmentedControl.css';
import '@mantine/core/styles/Pagination.css';
import '@mantine/core/styles/Slider.css';
import './tokens.css';
import './components.css';
import './page.css';

export { THEME } from './theme.js';
