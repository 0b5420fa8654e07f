@echo off
rem Runs Readfall from the folder it was unpacked to. Needs Java 17 or newer: from JAVA_HOME, else the first on PATH.
rem Set options for Java itself, such as the heap size, in JDK_JAVA_OPTIONS.
setlocal DisableDelayedExpansion

if not defined JAVA_HOME goto path
set "READFALL_JAVA=%JAVA_HOME%\bin\java.exe"
call :check
if not errorlevel 1 goto run

:path
set "READFALL_JAVA=java.exe"
call :check
if not errorlevel 1 goto run

echo readfall: Readfall needs Java 17 or newer: install it, or set JAVA_HOME to the folder it is in.>&2
exit /b 2

:run
rem The window and drawing run long enough for the full compiler.
set "READFALL_COMPILE=-XX:TieredStopAtLevel=1"
if "%~1"=="" set "READFALL_COMPILE="
if /i "%~1"=="open" set "READFALL_COMPILE="
if /i "%~1"=="draw" set "READFALL_COMPILE="
"%READFALL_JAVA%" -XX:+IgnoreUnrecognizedVMOptions %READFALL_COMPILE% -jar "%~dp0..\readfall.jar" %*
exit /b %ERRORLEVEL%

rem The option is new in Java 17.
:check
"%READFALL_JAVA%" --enable-native-access=ALL-UNNAMED -version >nul 2>nul
exit /b %ERRORLEVEL%
