@echo off
rem Starts Kitwright with the Java in JAVA_HOME, or the one on the PATH.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set program=-jar "%~dp0kitwright-0.1.0.jar"
set "made="
if exist "%~dp0kitwright.jsa.for" set /p made=<"%~dp0kitwright.jsa.for"
if "%made%\"=="%~dp0" set program="-XX:SharedArchiveFile=%~dp0kitwright.jsa" -Xlog:disable -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 "-Xbootclasspath/a:%~dp0kitwright-0.1.0.jar" -cp "%~dp0kitwright-0.1.0.jar" kitwright.cli.Main
"%java%" -XX:+IgnoreUnrecognizedVMOptions -Djdk.console=java.base -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:CICompilerCount=1 -XX:C1MaxInlineSize=18 -XX:NewSize=16m -XX:-UsePerfData -Xshare:auto %KITWRIGHT_JAVA_OPTIONS% %program% %*
exit /b %errorlevel%
