export { TesterPages as default, testerViewport as viewport } from "@/features/testing/home/components/tester-pages";
