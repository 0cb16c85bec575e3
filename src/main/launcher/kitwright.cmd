@echo off
rem Starts Kitwright with the Java in JAVA_HOME, or the one on the PATH.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "ready="
set "made="
if exist "%~dp0kitwright.jsa.for" set /p made=<"%~dp0kitwright.jsa.for"
if "%made%\"=="%~dp0" set ready="-XX:SharedArchiveFile=%~dp0kitwright.jsa" -Xlog:disable
"%java%" -Djdk.console=java.base -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto %KITWRIGHT_JAVA_OPTIONS% %ready% -jar "%~dp0kitwright-0.1.0.jar" %*
exit /b %errorlevel%
