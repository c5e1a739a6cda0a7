@echo off
rem Starts Hibernacle. Needs Java 17 or newer: in the folder "runtime" beside "bin", in JAVA_HOME or
rem on the path. HIBERNACLE_JAVA_OPTIONS holds options for Java, such as -Xmx4g, apart by spaces.
rem The first plan leaves a file in %LOCALAPPDATA%\hibernacle from which Java starts quicker later
rem on; it may be deleted at any time.
setlocal DisableDelayedExpansion
set "program=%~dp0.."

rem Files dropped on this file in the Explorer: its window closes at the end unless it waits.
set "dropped="
set "terminal=false"
if "%~1"=="" goto find_java
if exist "%~1" set "dropped=maybe"
if not defined dropped goto find_java
set "dropped="
echo "%cmdcmdline:"=%" | findstr /i /c:" /c " >nul && set "dropped=yes"
if defined dropped set "terminal=true"

:find_java
set "java=%program%\runtime\bin\java.exe"
if exist "%java%" goto version
set "java="
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if defined java goto version
for %%i in (java.exe) do set "java=%%~$PATH:i"
if defined java goto version
echo Hibernacle needs Java 17 or newer, and none was found in JAVA_HOME or on the path. 1>&2
echo Install one, or set JAVA_HOME to its folder. 1>&2
set "code=1"
goto end

:version
for %%j in ("%java%") do set "bin=%%~dpj"
set "version="
for /f "tokens=2 delims==" %%v in ('findstr /b "JAVA_VERSION=" "%bin%..\release" 2^>nul') do set "version=%%~v"
if defined version goto compare
for /f "tokens=3" %%v in ('""%java%" -version 2^>^&1 ^| findstr /i /c:" version ""') do set "version=%%~v"

:compare
set "major="
for /f "delims=.-+_ " %%m in ("%version%") do set "major=%%m"
if not defined major goto too_old
if %major% GEQ 17 goto archive

:too_old
echo Hibernacle needs Java 17 or newer; "%java%" is %version%. 1>&2
echo Install a newer one, or set JAVA_HOME to its folder. 1>&2
set "code=1"
goto end

:archive
rem What is soon over is quicker with the quick compiler alone; planning wants the thorough one.
set "quick="
for %%c in (check winters species blank help --help --version) do if /i "%~1"=="%%c" set "quick=-XX:TieredStopAtLevel=1"
set "archive="
if not defined LOCALAPPDATA goto plain
if defined HIBERNACLE_JAVA_OPTIONS goto plain
set "cache=%LOCALAPPDATA%\hibernacle"
set "archive=%cache%\hibernacle-@project.version@-java-%version%.jsa"
if exist "%archive%" goto quick
set "learns="
if /i "%~1"=="plan" set "learns=yes"
if defined dropped set "learns=yes"
if not defined learns goto plain
if not exist "%cache%\" md "%cache%" 2>nul
if not exist "%cache%\" goto plain
set "unfinished=%archive%.%RANDOM%%RANDOM%.new"
"%java%" "-XX:ArchiveClassesAtExit=%unfinished%" -Xlog:disable -Dhibernacle.terminal=%terminal% -jar "%program%\lib\hibernacle.jar" %*
set "code=%ERRORLEVEL%"
if "%code%"=="0" move /y "%unfinished%" "%archive%" >nul 2>nul
if "%code%"=="4" move /y "%unfinished%" "%archive%" >nul 2>nul
if exist "%unfinished%" del /f /q "%unfinished%" 2>nul
goto end

:quick
"%java%" -Xshare:auto "-XX:SharedArchiveFile=%archive%" -XX:+VerifySharedSpaces -Xlog:disable %quick% -Dhibernacle.terminal=%terminal% -jar "%program%\lib\hibernacle.jar" %*
set "code=%ERRORLEVEL%"
goto end

:plain
"%java%" -Xlog:disable %quick% -Dhibernacle.terminal=%terminal% %HIBERNACLE_JAVA_OPTIONS% -jar "%program%\lib\hibernacle.jar" %*
set "code=%ERRORLEVEL%"

:end
if defined dropped pause
exit /b %code%
