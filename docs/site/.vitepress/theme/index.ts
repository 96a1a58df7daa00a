import type { Theme } from 'vitepress';
import DefaultTheme from 'vitepress/theme-without-fonts';
import { keepOffline } from './keep-offline.js';
import './style.css';

export default { extends: DefaultTheme, enhanceApp: keepOffline } satisfies Theme;
