// Compiled so that the header is: tests/CMakeLists.txt says which.
